import { createApp } from '../../src/server/create-app.js';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';
import { configOf } from '../support/app.js';
import { PASSWORD } from '../accounts/house.js';

/**
 * A service that a test kills: prints its address once it listens.
 * node run-typescript.mjs evidence-process.ts TARGET FOLDER
 */
const [target = '', folder = ''] = process.argv.slice(3);
const config = configOf(JSON.parse(target) as DatabaseTarget, folder);
const app = await createApp({ ...config, firstAdministrator: { name: 'root', password: PASSWORD } });
await app.listen(0, '127.0.0.1');
console.log(await app.getUrl());
