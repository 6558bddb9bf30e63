import { Store, useStore } from '../app/store.js';

/** The newer version that waits to be used; null while there is none. */
const newer = new Store<ServiceWorker | null>(null);

/** Has the browser keep the desk, so that it opens without signal. Plain HTTP beyond this machine gives no worker. */
export async function beginWorker(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const hadOne = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (hadOne) location.reload();
  });
  try {
    watch(await navigator.serviceWorker.register('/worker.js'));
  } catch (error) {
    console.warn('The browser does not keep the desk: without signal it will not open.', error);
  }
}

function watch(registration: ServiceWorkerRegistration): void {
  const offer = (): void => {
    if (navigator.serviceWorker.controller !== null) newer.set(registration.waiting);
  };
  offer();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offer);
  });
}

/** Uses the newer version; null while there is none. */
export function useNewerVersion(): (() => void) | null {
  const waiting = useStore(newer);
  return waiting && (() => waiting.postMessage('use-now'));
}
