import sans from '../design/fonts/source-sans-3-latin-wght-normal.woff2';
import serifItalic from '../design/fonts/source-serif-4-latin-wght-italic.woff2';
import serif from '../design/fonts/source-serif-4-latin-wght-normal.woff2';
import { writeXml, xml, type XmlNode } from './xml.ts';

/** Picture points to a pixel: sharp in a letter and on a fine screen. */
const SCALE = 2;
/** Browsers give up on larger canvases, some of them silently [px]. */
const MOST_SIDE = 8192;

async function base64(blob: Blob): Promise<string> {
  const reader = new FileReader();
  await new Promise((resolve, reject) => {
    reader.addEventListener('load', resolve);
    reader.addEventListener('error', () => reject(reader.error ?? new Error('unreadable')));
    reader.readAsDataURL(blob);
  });
  const address = reader.result as string;
  return address.slice(address.indexOf(',') + 1);
}

async function face(address: string, family: string, style: 'normal' | 'italic'): Promise<string> {
  const data = await base64(await (await fetch(address)).blob());
  return `@font-face{font-family:'${family}';font-style:${style};font-weight:200 900;src:url(data:font/woff2;base64,${data}) format('woff2')}`;
}

/** A drawing that is loaded as a picture sees nothing of the page around it: it must bring its letters along. */
async function withFaces(page: XmlNode): Promise<XmlNode> {
  const rules = await Promise.all([
    face(sans, 'Source Sans 3', 'normal'),
    face(serif, 'Source Serif 4', 'normal'),
    face(serifItalic, 'Source Serif 4', 'italic'),
  ]);
  return { ...page, children: [xml('style', {}, [rules.join('')]), ...page.children] };
}

/** A page as a PNG picture, in base64. */
export async function pngOf(page: XmlNode): Promise<string> {
  const [, , width = 1, height = 1] = String(page.attributes['viewBox']).split(' ').map(Number);
  const scale = Math.min(SCALE, MOST_SIDE / width, MOST_SIDE / height);
  const sized = {
    ...page,
    attributes: { ...page.attributes, width: Math.round(width * scale), height: Math.round(height * scale) },
  };
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(writeXml(await withFaces(sized)))}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth;
  canvas.height = image.naturalHeight;
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('this browser gives no canvas to draw on');
  pen.drawImage(image, 0, 0);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (blob === null) throw new Error('this browser made no picture of the drawing');
  return base64(blob);
}
