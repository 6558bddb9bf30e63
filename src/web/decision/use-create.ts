import { useState } from 'preact/hooks';
import { askAgain } from '../ask/use-ask.js';
import { type Telling, useTell } from '../ask/use-tell.js';

export interface Creating extends Telling {
  /** Sends it; a second press of the same makes nothing twice. True once it is there. */
  readonly create: (body: object) => Promise<boolean>;
  readonly done: boolean;
}

/** Adds something to an incident, such as a filing, under a key of its own that lasts until it is there. */
export function useCreate(incident: string, what: string): Creating {
  const telling = useTell();
  const [key, setKey] = useState(() => crypto.randomUUID());
  const [done, setDone] = useState(false);
  const create = async (body: object): Promise<boolean> => {
    setDone(false);
    const path = `/api/incidents/${incident}`;
    const answer = await telling.tell(`${path}/${what}`, { method: 'POST', body, key }, [path]);
    if (answer === undefined) {
      // Whatever was refused may rest on what is no longer so.
      await askAgain(path);
      return false;
    }
    setKey(crypto.randomUUID());
    setDone(true);
    return true;
  };
  return { ...telling, create, done };
}
