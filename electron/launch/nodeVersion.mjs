// Comes before everything else, and so is written as an old Node can read it too.
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(
    `Node 20.19 or later was expected; this is ${process.versions.node}. Install a newer one from nodejs.org, then try again.`,
  );
  process.exit(1);
}
