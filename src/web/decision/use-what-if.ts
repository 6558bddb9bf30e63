import { useEffect, useState } from 'preact/hooks';
import type { Determination } from '../../../shared/determination/determination.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import { type FactValue, withFact } from './fact-value.js';
import type { Matter } from './use-matter.js';

/** A fact as somebody tries it. */
export interface Try {
  readonly pointer: string;
  readonly value: FactValue;
}

/** What would come of the tries; `failed` where it could not be determined here. */
export type Tried =
  | { readonly state: 'working' }
  | { readonly state: 'failed' }
  | { readonly state: 'refused'; readonly errors: readonly FieldError[] }
  | { readonly state: 'done'; readonly facts: IncidentFacts; readonly determination: Determination };

export interface WhatIf {
  readonly tries: readonly Try[];
  readonly tried: Tried | null;
  readonly add: (one: Try) => void;
  readonly drop: (pointer: string) => void;
  readonly clear: () => void;
}

/** Values that are tried beside the record, and the determination that would come of them. Nothing is sent. */
export function useWhatIf({ determined, packs }: Pick<Matter, 'determined' | 'packs'>): WhatIf {
  const [tries, setTries] = useState<readonly Try[]>([]);
  const [tried, setTried] = useState<Tried | null>(null);
  useEffect(() => {
    let left = false;
    if (tries.length === 0) setTried(null);
    else {
      setTried({ state: 'working' });
      const facts = tries.reduce((so, { pointer, value }) => withFact(so, pointer, value), determined.facts);
      void determineFacts(facts, packs).then((came) => left || setTried(came));
    }
    return () => {
      left = true;
    };
  }, [tries, determined.version, packs]);
  return {
    tries,
    tried,
    add: (one) => setTries([...tries.filter(({ pointer }) => pointer !== one.pointer), one]),
    drop: (gone) => setTries(tries.filter(({ pointer }) => pointer !== gone)),
    clear: () => setTries([]),
  };
}

async function determineFacts(facts: IncidentFacts, packs: Matter['packs']): Promise<Tried> {
  try {
    const { determineHere } = await import('../determination/determine-here.js');
    const came = await determineHere(facts, packs);
    return 'errors' in came
      ? { state: 'refused', errors: came.errors }
      : { state: 'done', facts, determination: came.determination };
  } catch (error) {
    console.warn('What would be could not be determined here.', error);
    return { state: 'failed' };
  }
}
