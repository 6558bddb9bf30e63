import { useState } from 'preact/hooks';
import { type Telling, useTell } from '../ask/use-tell.js';

export interface Sending extends Telling {
  /** Makes a thing; a second press of the same makes nothing twice. */
  readonly create: <Answer>(
    path: string,
    body: object,
    touches: readonly string[],
  ) => Promise<Answer | undefined>;
  /** The key of the thing that is being made, to be sent later under the same. */
  readonly key: string;
  /** The next thing is another one. */
  readonly renew: () => void;
}

/** Makes and changes things, each under a key of its own that lasts until it is there. */
export function useSend(): Sending {
  const telling = useTell();
  const [key, setKey] = useState<string>(() => crypto.randomUUID());
  const renew = (): void => setKey(crypto.randomUUID());
  return {
    ...telling,
    key,
    renew,
    create: async <Answer>(path: string, body: object, touches: readonly string[]) => {
      const answer = await telling.tell<Answer>(path, { method: 'POST', body, key }, touches);
      if (answer !== undefined) renew();
      return answer;
    },
  };
}
