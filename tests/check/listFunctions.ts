import fs from 'node:fs';
import path from 'node:path';
import { format } from 'oxfmt';
import ts from 'typescript';

const core = path.resolve(import.meta.dirname, '../../core');

/** The file that carries the list. */
export const readme = path.join(core, 'README.md');

/** In the order in which a set-up is worked out. */
const rooms = [
  ['units', 'Quantities as people write and read them.'],
  ['tables', 'Pasted tables: their columns, their units, and what became of each line.'],
  ['bow', 'Weight at this draw, brace height, stroke, energy, speed.'],
  ['arrow', 'Spine, tube, mass, build, bending.'],
  ['suitability', 'Whether the shaft suits.'],
  ['safety', 'What stops, and what wants care.'],
  ['findings', 'Every check of a set-up as a line to show.'],
  ['group', 'Measures of a group, the shift between two, faces and scores, and the distributions under them.'],
  ['trials', 'What bare shafts say beside fletched ones, and the one next change.'],
  ['questions', 'What a technician asks of one group, each with its answer and what would tell.'],
  ['flight', 'Air, drag, trajectory.'],
  ['aim', 'Sight, drop, point-on distance, point of aim.'],
  ['dozen', 'A numbered set: its spread, the odd arrows, the best-matched ones, and what the spread does at the target.'],
  ['photo', 'A photographed face: its rings found, the way it lies, and the place of a hole.'],
  ['compare', 'Two set-ups, or two snapshots, figure by figure.'],
] as const;

export interface PublicFunction {
  readonly room: string;
  readonly name: string;
  readonly parameters: readonly string[];
  /** The first line of its comment. */
  readonly sentence: string;
  /** What comes back, with its unit in brackets. */
  readonly returns: string;
}

/** Every function that a room's door lets out, by room and name, with what its comment says. */
export function publicFunctions(): PublicFunction[] {
  const doorOf = (room: string) => path.join(core, room, 'index.ts');
  const config = ts.getParsedCommandLineOfConfigFile(path.join(core, 'tsconfig.json'), undefined, {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: () => undefined,
  });
  if (config === undefined) throw new Error('core/tsconfig.json could not be read.');
  const program = ts.createProgram(
    rooms.map(([room]) => doorOf(room)),
    config.options,
  );
  const checker = program.getTypeChecker();
  return rooms.flatMap(([room]) => {
    const door = program.getSourceFile(doorOf(room));
    const module = door === undefined ? undefined : checker.getSymbolAtLocation(door);
    if (module === undefined) throw new Error(`core/${room}/index.ts lets nothing out.`);
    return checker
      .getExportsOfModule(module)
      .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
      .flatMap((symbol) => {
        const [signature] = symbol.flags & ts.SymbolFlags.Value ? checker.getTypeOfSymbol(symbol).getCallSignatures() : [];
        return signature === undefined ? [] : [told(room, symbol, signature)];
      })
      .sort((a, b) => (a.name < b.name ? -1 : 1));
  });
}

function told(room: string, symbol: ts.Symbol, signature: ts.Signature): PublicFunction {
  const tags = symbol.getJsDocTags();
  const returned = tags.find((tag) => tag.name === 'returns');
  // A parameter that is taken apart in the signature has its name in the comment only.
  const documented = tags
    .filter((tag) => tag.name === 'param')
    .map((tag) => tag.text?.find(({ kind }) => kind === 'parameterName')?.text ?? '');
  return {
    room,
    name: symbol.name,
    parameters: signature.parameters.map(({ name }, at) => (name.startsWith('__') ? (documented[at] ?? name) : name)),
    sentence: ts.displayPartsToString(symbol.getDocumentationComment(undefined)).trim().split('\n')[0] ?? '',
    returns: ts.displayPartsToString(returned?.text).trim().replaceAll(/\s+/g, ' '),
  };
}

const BEGIN = '<!-- The list below is made by `npm run functions`; a test holds it to the comments in the code. -->';

/** The readme with this list in the place of the one it has. */
export async function withList(text: string, functions: readonly PublicFunction[]): Promise<string> {
  const at = text.indexOf(BEGIN);
  if (at < 0) throw new Error(`core/README.md has lost the line that begins its list: ${BEGIN}`);
  const list = rooms.map(([room, about]) => {
    const lines = functions
      .filter((one) => one.room === room)
      .map(
        ({ name, parameters, sentence, returns }) =>
          `- \`${name}(${parameters.join(', ')})\` - ${sentence} **Returns** ${returns}`,
      );
    return `## ${room}\n\n${about}\n\n${lines.join('\n')}\n`;
  });
  return (await format(readme, `${text.slice(0, at)}${BEGIN}\n\n${list.join('\n')}`)).code;
}

export const readReadme = (): string => fs.readFileSync(readme, 'utf8');
