import { packCode } from '../law/pack-code.js';
import type { RulePack } from '../law/rule-pack.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import type { Duty, UnaskedQuestion } from './determination.js';
import { determineNotices, dutyId, type Case } from './determine-pack.js';
import { isRaised, unaskedOf } from './raise-duty.js';

/** Whether a pack is about another matter than accident reports. */
export function isOther({ subject }: Pick<RulePack, 'subject'>): boolean {
  return subject !== undefined;
}

/**
 * The duties on other matters that the facts call up, of the packs of one jurisdiction, in the order of the packs. What
 * the facts do not speak of gives no duty, and `listUnasked` says what was not asked.
 */
export function determineOther(packs: readonly RulePack[], jurisdiction: string, at: Case): Duty[] {
  return packs
    .filter((pack) => isOther(pack) && pack.jurisdiction === jurisdiction)
    .flatMap((pack) => {
      const notices = pack.notices.filter((notice) => isRaised(notice, at.occurrence.facts));
      return determineNotices(pack, notices, at).map((duty) => ({ ...duty, pack: packCode(pack) }));
    });
}

/** What nobody has stated, and which duty it could call up. */
export function listUnasked(packs: readonly RulePack[], facts: IncidentFacts): UnaskedQuestion[] {
  return packs
    .filter(isOther)
    .flatMap((pack) =>
      pack.notices
        .filter((notice) => !isRaised(notice, facts))
        .flatMap((notice) =>
          unaskedOf(notice, facts).map((question) => ({ duty: dutyId(pack, notice.id), ...question })),
        ),
    );
}
