import { useState } from 'preact/hooks';
import { queueRequest } from '../device/outbox.js';

export interface Adding {
  readonly state: 'not-yet' | 'kept' | 'not-kept';
  /** Adds to a list of the incident, with or without signal; true once it is on the disk. */
  readonly add: (list: string, body: object) => Promise<boolean>;
}

/** Adds a thing, a hand-over or what somebody holds: a thing is taken into the hand at the water, where no signal is. */
export function useAdd(incident: string): Adding {
  const [state, setState] = useState<Adding['state']>('not-yet');
  const add = async (list: string, body: object): Promise<boolean> => {
    try {
      const path = `/api/incidents/${incident}/${list}`;
      await queueRequest({ line: incident, about: 'evidence', method: 'POST', path, body });
      setState('kept');
      return true;
    } catch (error) {
      console.warn('It could not be kept on this device.', error);
      setState('not-kept');
      return false;
    }
  };
  return { state, add };
}
