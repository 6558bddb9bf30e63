import type { FieldKinds, Profile } from '../../../shared/hand-over/hand-over-profile.js';
import type { KeptCaution, KeptPacket } from './hand-over-book.js';
import type { PacketPlan } from './plan-packet.js';

/** What would leave, item by item, for whoever is about to send it. */
export function previewOf(
  { fields, files, others, cautions, withheld }: PacketPlan,
  { title, minors }: Profile,
  { kinds, attachments }: FieldKinds,
) {
  const count = (does: string) =>
    [...fields, ...files].filter(({ verdict, kind }) => verdict.does === does && kind !== 'key').length;
  return {
    title,
    minors,
    counts: { goes: count('goes'), masked: count('masked'), stays: count('stays') },
    fields: fields
      .filter(({ kind }) => kind !== 'key')
      .map(({ section, path, kind = null, verdict, value }) => ({
        section,
        path,
        kind,
        ...verdict,
        ...(value === undefined ? {} : { value }),
      })),
    files: files.map(({ file, kind, verdict, blur }) => ({
      id: file.id,
      name: file.name ?? null,
      type: file.type,
      size: file.size,
      kind,
      regions: blur.length,
      ...verdict,
    })),
    others: others.map(({ kind, count, verdict }) => ({ kind, count, ...verdict })),
    cautions,
    withheld: withheld.withheld,
    kinds: [...kinds, ...attachments].map(({ kind, what }) => ({ kind, what })),
  };
}

/** A packet as it is listed: what is in it stands in its manifest. */
export function packetView(packet: KeptPacket) {
  const { stamp, ...seen } = packet;
  const told = stamp === undefined ? {} : { stamp: { at: stamp.at, authority: stamp.authority } };
  return { ...seen, ...told, version: 1 + packet.deliveries.length };
}

/** What the book keeps of the texts that may tell too much: not their words, which stand in the packet. */
export function keptCautions(cautions: PacketPlan['cautions'], read: readonly string[]): KeptCaution[] {
  return cautions.map(({ section, path, tells }, place) => {
    const what = `${section}:${path}`;
    return { id: `t${place + 1}`, what, tells, read: read.includes(what) };
  });
}
