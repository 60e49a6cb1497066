import { z } from 'zod';

// zod probes `new Function('')` when the first schema is made, unless told not to; under the bench's content security policy the probe is
// a reported violation. Whoever makes schemas takes z from here, so that it has been told before.
z.config({ jitless: true });

export { z };
