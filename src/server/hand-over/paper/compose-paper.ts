import type { JsonObject } from '../../../../shared/record/json-value.js';
import { sectionTitle } from '../../../../shared/record/field-words/tell-field.js';
import { SECTION_NAMES, type SectionName } from '../../../../shared/record/incident-record.js';
import type { Block } from './blocks.js';
import { composeCertificate } from './compose-certificate.js';
import { composeDamage } from './compose-damage.js';
import { composeFiles } from './compose-files.js';
import { composeDetermination, composePrivileged, composeTasks } from './compose-law.js';
import { composeLists } from './compose-lists.js';
import { composeNote } from './compose-note.js';
import { type Composing, composeSection, maskedOf } from './compose-section.js';
import { composeScene } from './compose-scene.js';
import { composeTimeline } from './compose-timeline.js';
import { composeMap } from './compose-map.js';
import { composeWithheld } from './compose-withheld.js';
import type { Names } from './name-things.js';
import type { PaperMatter } from './paper-matter.js';

/** Sections in the order in which a stranger asks. */
const ASKED: readonly SectionName[] = [
  'account',
  'time-and-place',
  'conditions',
  'scene',
  'people',
  'craft',
  'damage',
  'call',
  'emergency-response',
  'rental',
  'check-in',
  'authorities',
  'statements',
  'contacts',
];

/** Told in one order with the moments of other sections. */
const TOLD_BY_TIME: SectionName = 'timeline';

/** A section that has no place above comes at the end: nothing that leaves is missing on paper. */
const ORDER: readonly SectionName[] = [
  ...ASKED,
  ...SECTION_NAMES.filter((name) => !ASKED.includes(name) && name !== TOLD_BY_TIME),
];

/** Lists of the service, with what their part is called; what is not here is told elsewhere. */
export const LISTS: readonly (readonly [section: string, title: string])[] = [
  ['custody', 'Things kept as evidence'],
  ['outside-evidence', 'Evidence that others hold'],
  ['filings', 'Reports and notices made'],
  ['decisions', 'Decisions that were signed'],
  ['reports', 'Work on the official reports'],
  ['holds', 'Holds'],
  ['requests', 'Papers that asked for records'],
  ['assignments', 'Counsel'],
];

const PHOTOGRAPHS = 'Photographs and other files';
const CERTIFICATE = 'Certificate of a custodian: draft, ask counsel';

/** The parts without which a reader would ask whether they were forgotten. */
const ALWAYS: ReadonlySet<string> = new Set([
  'account',
  'time-and-place',
  'conditions',
  'people',
  'craft',
  'damage',
  'statements',
  'filings',
]);

/** All parts of the file after its cover, each a title and what stands under it. */
export function composePaper(matter: PaperMatter, names: Names): Block[] {
  const { plan, timeZone } = matter;
  const { sections, attachments } = plan.record;
  const composing: Composing = { names, timeZone, masked: maskedOf(plan.withheld) };
  const { determination, task, privileged } = attachments;
  return [
    ...ORDER.flatMap((section) => part(sectionTitle(section, 'en'), written(section), ALWAYS.has(section))),
    ...part('Minute by minute', composeTimeline(plan.record, timeZone)),
    ...part(PHOTOGRAPHS, composeFiles(matter, names), true),
    ...LISTS.flatMap(([section, title]) => part(title, listed(section), ALWAYS.has(section))),
    ...part(
      'What the law was found to call for',
      determination ? composeDetermination(determination, names, timeZone) : [],
    ),
    ...part('Tasks', task ? composeTasks(task, names, timeZone) : []),
    ...part('Notes that a lawyer asked for', privileged ? composePrivileged(privileged, timeZone) : []),
    ...part('What is withheld and masked, and why', composeWithheld(plan.withheld)),
    ...part('Note on this disclosure', composeNote(matter)),
    ...(plan.record.recipient === 'counsel' ? part(CERTIFICATE, composeCertificate(matter)) : []),
  ];

  function written(section: SectionName): Block[] {
    const document = sections[section] as JsonObject | undefined;
    if (document === undefined) return [];
    if (section === 'damage') return composeDamage(document, composing);
    if (section === 'scene') return composeScene(document, composing);
    if (section === 'time-and-place')
      return [...composeSection(section, document, composing), ...composeMap(document, timeZone)];
    return composeSection(section, document, composing);
  }

  function listed(section: string): Block[] {
    const document = attachments[section] as JsonObject | undefined;
    return document === undefined ? [] : composeLists(section, document, names, timeZone);
  }
}

function part(title: string, blocks: readonly Block[], always = false): Block[] {
  if (blocks.length > 0) return [{ kind: 'part', title, newPage: NEW_PAGE.has(title) }, ...blocks];
  return always
    ? [
        { kind: 'part', title },
        { kind: 'text', text: NOTHING },
      ]
    : [];
}

/** Parts that begin a page: pictures need the room, and a certificate is taken out and signed. */
const NEW_PAGE: ReadonlySet<string> = new Set([sectionTitle('scene', 'en'), PHOTOGRAPHS, CERTIFICATE]);

const NOTHING = 'Nothing of this was recorded, or nothing of it leaves: see what is withheld and masked.';
