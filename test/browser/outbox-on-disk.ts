import type { Page } from 'playwright-core';

/** Something that a page queued and that was not sent; what is left out is as for a change that waits. */
export type Left = LeftRequest | LeftFile;

interface LeftFile {
  readonly kind: 'file';
  readonly id: string;
  readonly line: string;
  readonly about: string;
  readonly by: string | null;
  readonly incident: string;
  readonly name: string;
  readonly size: number;
  readonly sha256: string;
  /** What is in it; left out where the browser has thrown it away. */
  readonly content?: string;
}

interface LeftRequest {
  readonly id: string;
  readonly line: string;
  readonly about: string;
  readonly by: string | null;
  readonly method?: string;
  readonly path: string;
  readonly body: object;
  readonly version?: number;
  readonly opens?: boolean;
}

/** Leaves changes on the disk of the browser, sealed as the desk seals them, and opens the page anew. */
export async function leaveOnDisk(page: Page, left: readonly Left[]): Promise<void> {
  const items = left.map((one) => ({
    kind: 'request',
    method: 'PUT',
    key: `left-${one.line}-${one.id}`,
    queuedAt: new Date().toISOString(),
    state: 'waiting',
    ...one,
    id: one.id.padStart(12, '0'),
  }));
  await page.evaluate(`(async () => {
    const opening = indexedDB.open('incident-desk');
    const asked = (request) => new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const db = await asked(opening);
    const key = await asked(db.transaction('keys').objectStore('keys').get('device'));
    const put = async (drawer, id, text) => {
      const iv = crypto.getRandomValues(new Uint8Array(12));
      const bytes = new TextEncoder().encode(text);
      const sealed = { iv, bytes: await crypto.subtle.encrypt({ name: 'AES-GCM', iv }, key, bytes) };
      await asked(db.transaction(drawer, 'readwrite').objectStore(drawer).put(sealed, id));
    };
    for (const { content, ...item } of ${JSON.stringify(items)}) {
      if (content !== undefined) await put('files', item.id, content);
      await put('outbox', item.id, JSON.stringify(item));
    }
    db.close();
  })()`);
  await page.reload();
}
