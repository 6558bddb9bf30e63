import { render } from 'preact';
import { App } from './app/app.js';
import { beginCallSync } from './call/sync-call.js';
import { beginSending } from './device/send-outbox.js';
import { beginSectionSync } from './record/sync-sections.js';
import { beginSession } from './session/session.js';
import { beginWorker } from './worker/begin-worker.js';
import { language } from './words/speak.js';

document.documentElement.lang = language() === 'es' ? 'es-US' : 'en-US';
const place = document.getElementById('desk');
if (place === null) throw new Error('The page has no #desk.');
render(<App />, place);
void beginSession().then(beginCallSync).then(beginSectionSync).then(beginSending);
void beginWorker();

// On paper every reason is shown.
addEventListener('beforeprint', () => {
  for (const reasons of document.querySelectorAll('details')) reasons.open = true;
});
