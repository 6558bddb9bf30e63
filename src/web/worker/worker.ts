/**
 * Keeps the desk itself: its files, the law and the state lines, all of them public. What the service says about
 * people and incidents never goes through here; that is kept sealed (`device/sealed-store.ts`).
 */

/** Written in by the build: the files of this version, and a mark that changes with any of them. */
declare const DESK_FILES: readonly string[];
declare const DESK_VERSION: string;

interface Extendable extends Event {
  waitUntil: (work: Promise<unknown>) => void;
}
interface Fetched extends Extendable {
  readonly request: Request;
  respondWith: (response: Promise<Response>) => void;
}
interface Worker {
  skipWaiting: () => Promise<void>;
  readonly clients: { claim: () => Promise<void> };
  addEventListener: <Kind extends Event>(type: string, listener: (event: Kind) => void) => void;
}
const worker = self as unknown as Worker;

const FILES = `files-${DESK_VERSION}`;
const LAW = 'law';
/** Asked of the service first, so that a corrected law counts at once; kept for when there is no signal. */
const LAW_PATHS = ['/api/law', '/api/law/packs'];
/** The cases of a law are kept once its page has tried them. */
const isCases = (path: string): boolean => path.startsWith('/data/cases/');

worker.addEventListener<Extendable>('install', (event) => {
  event.waitUntil(keepAll());
});

worker.addEventListener<Extendable>('activate', (event) => {
  event.waitUntil(dropOlder());
});

worker.addEventListener<MessageEvent>('message', ({ data }) => {
  if (data === 'use-now') void worker.skipWaiting();
});

worker.addEventListener<Fetched>('fetch', (event) => {
  const { request } = event;
  const { pathname, origin } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) return;
  if (LAW_PATHS.includes(pathname) || isCases(pathname)) event.respondWith(lawFirstFromService(request));
  else if (pathname.startsWith('/api/')) return;
  else if (request.mode === 'navigate') event.respondWith(kept('/'));
  else if (DESK_FILES.includes(pathname)) event.respondWith(kept(pathname));
});

async function keepAll(): Promise<void> {
  const files = await caches.open(FILES);
  await files.addAll(DESK_FILES.map((file) => new Request(file, { cache: 'no-cache' })));
  const law = await caches.open(LAW);
  await law.addAll(LAW_PATHS);
}

async function dropOlder(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name !== FILES && name !== LAW).map((name) => caches.delete(name)),
  );
  await worker.clients.claim();
}

async function kept(path: string): Promise<Response> {
  const files = await caches.open(FILES);
  return (await files.match(path)) ?? fetch(path);
}

async function lawFirstFromService(request: Request): Promise<Response> {
  const law = await caches.open(LAW);
  try {
    const response = await fetch(request);
    if (response.ok) await law.put(request, response.clone());
    return response;
  } catch (error) {
    const found = await law.match(request);
    if (found === undefined) throw error;
    const answer = new Response(found.body, found);
    answer.headers.set('desk-kept', 'yes');
    return answer;
  }
}

export {};
