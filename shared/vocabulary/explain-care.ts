import { FIRST_AID_LIST, findBeyondFirstAid, findFirstAid } from './treatments.js';

/** Which of the treatments are on the closed list of first aid, and which go beyond it. */
export interface CareAid {
  readonly onList: readonly CareLine[];
  readonly beyond: readonly CareLine[];
  /** What this is worth; shown wherever the aid is shown. */
  readonly note: string;
}

export interface CareLine {
  readonly slug: string;
  readonly label: string;
  /** With the letter of the list for first aid, the list as a whole for what it leaves out. */
  readonly citation: string;
  readonly text: string;
}

const NOTE =
  `An aid, never a proof. ${FIRST_AID_LIST} is the list that employers use to keep injury records; nothing read ` +
  'says that the boating accident rule (33 CFR part 173) adopts it. What counts is the care needed, given or not, ' +
  'so listed treatments alone do not show that no more was needed. A person decides and says why.';

/**
 * Sorts treatments by the closed list of 29 CFR 1904.7(b)(5)(ii). The list is closed, so a treatment that it
 * does not name goes beyond first aid, a slug of no list included.
 * @example
 * explainCare(['massage', 'oxygen']).onList[0]?.citation // '29 CFR 1904.7(b)(5)(ii)(M)'
 * explainCare(['massage', 'oxygen']).beyond[0]?.slug // 'oxygen'
 */
export function explainCare(treatments: readonly string[]): CareAid {
  const onList: CareLine[] = [];
  const beyond: CareLine[] = [];
  for (const slug of new Set(treatments)) {
    const listed = findFirstAid(slug);
    if (listed === undefined) beyond.push(lineBeyond(slug));
    else onList.push({ slug, label: listed.label, citation: listed.source, text: listed.definition });
  }
  return { onList, beyond, note: NOTE };
}

function lineBeyond(slug: string): CareLine {
  const term = findBeyondFirstAid(slug);
  const near = term?.mistakenFor ?? null;
  const reason = near === null ? 'Not among (A) to (N).' : `Not what (${near}) covers.`;
  return {
    slug,
    label: term?.label ?? slug,
    citation: FIRST_AID_LIST,
    text: term === undefined ? reason : `${reason} ${term.definition}`,
  };
}
