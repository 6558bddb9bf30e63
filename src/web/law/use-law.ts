import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { ask, KEPT_HERE } from '../ask/ask.js';
import { type Asked, useAskWith } from '../ask/use-ask.js';

const PACKS = '/api/law/packs';

export interface LawInUse {
  readonly packs: readonly RulePack[];
  /** It comes from the worker of this browser, since there is no signal. */
  readonly kept: boolean;
}

/** Every pack in force. The worker of the browser keeps it, so that it is there without signal. */
export function useLaw(): Asked<LawInUse> {
  // Under a key of its own: others ask the same address for the packs alone.
  return useAskWith<LawInUse>(`${PACKS}#in-use`, {}, async (_, signal) => {
    let kept = false;
    const onHeaders = (headers: Headers): void => void (kept = headers.has(KEPT_HERE));
    const packs = await ask<readonly RulePack[]>(PACKS, { signal, onHeaders });
    return { packs, kept };
  });
}

/** `hrefOf(texas)` is `'/law/TX'`. */
export function hrefOf(pack: Pick<RulePack, 'jurisdiction' | 'subject'>): string {
  return `/law/${packCode(pack)}`;
}
