import { useEffect, useState } from 'preact/hooks';
import { Note } from '../look/notes.js';
import { common } from '../words/common.js';

/** Asks the browser to keep what is stored; warns where it does not promise that. */
export function StorageNote() {
  const [evictable, setEvictable] = useState(false);
  useEffect(() => {
    void askToKeep().then((promised) => setEvictable(!promised));
  }, []);
  return evictable ? <Note>{common.sending.evictable}</Note> : null;
}

async function askToKeep(): Promise<boolean> {
  if (navigator.storage?.persist === undefined) return false;
  return (await navigator.storage.persisted()) || navigator.storage.persist();
}
