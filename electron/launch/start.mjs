// `npm start`. Only what an old Node can read stands here, so that it can say that it is too old.
import './nodeVersion.mjs';

import('./open.mjs')
  .then(({ start }) => start())
  .catch((error) => {
    console.error(`The bench does not start: ${error.message}`);
    process.exit(1);
  });
