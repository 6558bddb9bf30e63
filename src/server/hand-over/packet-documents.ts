import { buffer } from 'node:stream/consumers';
import type { Profile } from '../../../shared/hand-over/hand-over-profile.js';
import { type Manifest, PACKET_FILES, type PacketProof } from '../../../shared/hand-over/packet.js';
import type { HandOverForms } from './hand-over-forms.js';
import { drawPaper } from './paper/draw-paper.js';
import type { PaperMatter } from './paper/paper-matter.js';
import { packetReadme } from './packet-readme.js';
import type { PacketPlan } from './plan-packet.js';
import { writePacketWorkbook } from './write-packet-workbook.js';
import { zoneOf } from './zone-of.js';

export interface PacketDocument {
  readonly path: string;
  readonly type: string;
  readonly content: Buffer;
}

/** A token by itself has no registered type of its own; it is CMS (RFC 5652, RFC 7193). */
const STAMP_TYPE = 'application/cms';
const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The evidence that leaves with a packet: its lines in the manifest, and its pictures as they are put on paper. */
export type LeavingEvidence = Pick<PaperMatter, 'evidence' | 'pictures'>;

/** Everything in a packet that is made for it, but for copies of pictures and the manifest. */
export async function packetDocuments(
  about: Omit<Manifest, 'files'>,
  plan: PacketPlan,
  profile: Profile,
  leaving: LeavingEvidence,
  { recordSchema }: HandOverForms,
): Promise<PacketDocument[]> {
  const { record, withheld, proof } = plan;
  const token = tokenOf(proof);
  const timeZone = zoneOf(record);
  const paper = await drawPaper({ about, plan, profile, ...leaving, timeZone });
  return [
    {
      path: PACKET_FILES.readme,
      type: 'text/plain; charset=utf-8',
      content: Buffer.from(packetReadme(about, timeZone, token !== undefined).replaceAll('\n', '\r\n')),
    },
    { path: PACKET_FILES.paper, type: 'application/pdf', content: await buffer(paper) },
    asJson(PACKET_FILES.record, record),
    { path: PACKET_FILES.workbook, type: XLSX, content: await writePacketWorkbook(record, withheld) },
    asJson(PACKET_FILES.withheld, withheld),
    asJson(PACKET_FILES.proof, proof),
    ...(token === undefined ? [] : [{ path: PACKET_FILES.timeStamp, type: STAMP_TYPE, content: token }]),
    asJson(PACKET_FILES.profile, profile),
    { path: PACKET_FILES.schema, type: 'application/schema+json', content: Buffer.from(recordSchema) },
  ];
}

/** The token over the head of this packet, for programs that check such. */
function tokenOf({ head, stamped = [] }: PacketProof): Buffer | undefined {
  const own = stamped.find((one) => one.head.size === head.size);
  return own === undefined ? undefined : Buffer.from(own.token, 'hex');
}

export function asJson(path: string, value: object): PacketDocument {
  return { path, type: 'application/json', content: Buffer.from(`${JSON.stringify(value, null, 2)}\n`) };
}
