import { useState } from 'preact/hooks';
import type { SectionName } from '../../../shared/record/incident-record.js';
import { queueRequest } from '../device/outbox.js';

/** How a note that something was given came out. */
export type Gave = 'not-yet' | 'kept' | 'not-kept';

export interface Giving {
  readonly gave: Gave;
  /** Adds to a section of the record; it is on the disk when this returns, and is sent when there is signal. */
  readonly give: (section: SectionName, addition: object, about: string) => Promise<boolean>;
}

/** Notes what was given to somebody outside, with or without signal. */
export function useGive(incident: string): Giving {
  const [gave, setGave] = useState<Gave>('not-yet');
  const give = async (section: SectionName, addition: object, about: string): Promise<boolean> => {
    try {
      await queueRequest({
        line: incident,
        about,
        method: 'POST',
        path: `/api/incidents/${incident}/sections/${section}/additions`,
        body: addition,
      });
      setGave('kept');
      return true;
    } catch (error) {
      console.warn('What was given could not be kept on this device.', error);
      setGave('not-kept');
      return false;
    }
  };
  return { gave, give };
}
