import { applyProfile, namesToMask } from '../../../shared/hand-over/apply-profile.js';
import type { DecidedField } from '../../../shared/hand-over/apply-section.js';
import { applyToAttachments } from '../../../shared/hand-over/apply-to-attachments.js';
import { type DecidedFile, decideFile } from '../../../shared/hand-over/decide-file.js';
import { earlierHeads } from '../../../shared/hand-over/earlier-heads.js';
import { decideItem, type Verdict } from '../../../shared/hand-over/decide-item.js';
import type { Profile } from '../../../shared/hand-over/hand-over-profile.js';
import { type Caution, findCautions } from '../../../shared/hand-over/find-cautions.js';
import { listWithheld, type OtherWithheld } from '../../../shared/hand-over/list-withheld.js';
import { maskNames } from '../../../shared/hand-over/mask-value.js';
import type { PacketProof, PacketRecord, Withheld } from '../../../shared/hand-over/packet.js';
import { proveShown } from '../../../shared/hand-over/prove-shown.js';
import type { SenderChoices } from '../../../shared/hand-over/sender-choices.js';
import { standingFilings, type Filing } from '../../../shared/decision/filing.js';
import type { RequestsSection } from '../../../shared/record/legal-request.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { JsonValue } from '../../../shared/record/json-value.js';
import { whenItHappened } from '../../../shared/record/when-it-happened.js';
import type { HandOverForms } from './hand-over-forms.js';
import type { Matter } from './matter-reader.js';

/** One of the few things that stand beside the log. */
export interface DecidedOther {
  readonly kind: 'determination' | 'task' | 'privileged';
  readonly count: number;
  readonly verdict: Verdict;
}

/** What would leave, item by item, and the documents that say so. */
export interface PacketPlan {
  readonly fields: readonly DecidedField[];
  readonly files: readonly DecidedFile[];
  readonly others: readonly DecidedOther[];
  /** Texts to be read before they leave. */
  readonly cautions: readonly Caution[];
  readonly record: PacketRecord;
  readonly withheld: Withheld;
  readonly proof: PacketProof;
}

const CAUTIONS = [
  'Anyone hurt, missing or in danger: emergency services first.',
  'This is no legal advice. Confirm with the agency and with counsel.',
  'What is not written here was not recorded or is withheld: it is never a no.',
];

/**
 * Decides every item of an incident for one recipient. Nothing is written, nothing leaves.
 * @param name of the recipient, as earlier packets to them bear it
 */
export function planPacket(
  matter: Matter,
  { classify, kinds }: HandOverForms,
  { profile, name }: { profile: Profile; name: string },
  sender: SenderChoices,
): PacketPlan {
  const { record, attachments, evidence, determination, privileged, proof, packets, mailings, asOf } = matter;
  const names = namesToMask(record, profile);
  const filed = { copies: copiesFiled(matter), requests: papersOf(matter) };
  const files = (evidence.files ?? []).map((file) => decideFile(file, record, filed, profile, sender));
  const written = applyProfile(record, classify, profile, sender);
  const kept = applyToAttachments(record, attachments, files, profile, sender);
  const fields = [...written.fields, ...kept.fields];
  const others: DecidedOther[] = [
    { kind: 'determination', count: determination === null ? 0 : 1, ...decided('determination') },
    { kind: 'task', count: matter.tasks.length, ...decided('task') },
    { kind: 'privileged', count: privileged.length, ...decided('privileged') },
  ];
  const goes = (kind: DecidedOther['kind']): boolean =>
    others.some((one) => one.kind === kind && one.verdict.does === 'goes');
  const going = (kind: string): boolean => decideItem({ kind, id: kind }, profile, sender).does === 'goes';

  function decided(kind: string): { verdict: Verdict } {
    return { verdict: decideItem({ kind, id: kind }, profile, sender) };
  }

  return {
    fields,
    files,
    others,
    cautions: findCautions(fields, yearOf(record), profile, sender),
    withheld: listWithheld(
      fields,
      files,
      others.flatMap(({ kind, count, verdict }): OtherWithheld[] =>
        verdict.does === 'stays' ? [{ kind, count, reason: verdict.reason }] : [],
      ),
      kinds,
    ),
    proof: proveShown(
      proof.entries,
      proof.tree,
      fields,
      { earlier: going('earlier-value'), reasons: going('reason-for-change'), authors: going('author') },
      {
        received: earlierHeads(packets, mailings, { recipient: profile.recipient, name }),
        stamped: packets.flatMap(({ head, stamp }) =>
          stamp === undefined ? [] : [{ head, token: stamp.token }],
        ),
      },
    ),
    record: {
      format: 'incident-desk/packet-record/1',
      reference: record.incident.reference,
      asOf,
      recipient: profile.recipient,
      timeZone: record.incident.timeZone,
      cautions: CAUTIONS,
      sections: written.sections,
      attachments: {
        ...kept.sections,
        ...(goes('determination') && determination !== null
          ? { determination: determinationOf(matter, names) as object }
          : {}),
        ...(goes('task') && matter.tasks.length > 0
          ? {
              task: maskNames(
                names,
                matter.tasks.map((task) => ({ ...task })),
              ) as object,
            }
          : {}),
        ...(goes('privileged') && privileged.length > 0 ? { privileged } : {}),
      },
    },
  };
}

const yearOf = (record: IncidentRecord): number => Number(whenItHappened(record).occurredAt.slice(0, 4));

function determinationOf({ determination }: Matter, names: readonly string[]): JsonValue {
  if (determination === null) return null;
  const { sequence, madeAt, packs, determination: result } = determination;
  // Through JSON, as that is how it leaves: members that are undefined are left out.
  return maskNames(names, JSON.parse(JSON.stringify({ sequence, madeAt, packs, result })) as JsonValue);
}

/** Files that show the papers by which somebody asked for records. */
function papersOf({ attachments }: Matter): ReadonlySet<string> {
  const { requests = [] } = (attachments['requests'] ?? {}) as RequestsSection;
  return new Set(requests.flatMap(({ papers = [] }) => papers));
}

/** Files that are copies of reports which were made and still count. */
function copiesFiled({ attachments }: Matter): ReadonlySet<string> {
  const { filings = [] } = (attachments['filings'] ?? {}) as { filings?: Filing[] };
  return new Set(
    standingFilings(filings).flatMap(({ form, copy }) => (form === 'report' ? (copy ?? []) : [])),
  );
}
