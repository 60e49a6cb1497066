// Comes before everything else, and so is written as an old Node can read it too.
const wanted = [20, 19];
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < wanted[0] || (major === wanted[0] && minor < wanted[1])) {
  console.error(
    `Node 20.19 or later was expected; this is ${process.versions.node}. Install a newer one from nodejs.org, then try again.`,
  );
  process.exit(1);
}
