// `npm run functions`: writes the list of core's public functions anew into core/README.md, from the comments in the code.
import fs from 'node:fs';
import path from 'node:path';
import { runnerImport } from 'vite';

const root = path.resolve(import.meta.dirname, '../..');
const { module } = await runnerImport(path.join(import.meta.dirname, 'listFunctions.ts'), { root, configFile: false });
const functions = module.publicFunctions();
fs.writeFileSync(module.readme, await module.withList(module.readReadme(), functions));
console.log(`${functions.length} functions listed in core/README.md`);
