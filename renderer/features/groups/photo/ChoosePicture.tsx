import { useEffect, useRef } from 'react';

interface Props {
  /** Once a picture is open, choosing another is a small thing. */
  again: boolean;
  onChoose(file: Blob): void;
}

/** A picture out of a file, dropped on the window, or pasted. It never leaves this computer. */
export function ChoosePicture({ again, onChoose }: Props) {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const drag = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      // Otherwise the browser leaves the bench for the picture.
      event.preventDefault();
      const [file] = event.dataTransfer?.files ?? [];
      if (file !== undefined) onChoose(file);
    };
    const paste = (event: ClipboardEvent) => {
      const [file] = event.clipboardData?.files ?? [];
      if (file === undefined) return;
      event.preventDefault();
      onChoose(file);
    };
    window.addEventListener('dragover', drag);
    window.addEventListener('drop', drop);
    window.addEventListener('paste', paste);
    return () => {
      window.removeEventListener('dragover', drag);
      window.removeEventListener('drop', drop);
      window.removeEventListener('paste', paste);
    };
  }, [onChoose]);
  const choose = () => input.current?.click();
  return (
    <>
      {again ? (
        <button type="button" className="link" onClick={choose}>
          Another picture
        </button>
      ) : (
        <button type="button" className="btn" onClick={choose}>
          Choose a picture
        </button>
      )}
      <input
        ref={input}
        type="file"
        hidden
        aria-label="Picture of the target"
        accept="image/*"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file !== undefined) onChoose(file);
          currentTarget.value = '';
        }}
      />
    </>
  );
}
