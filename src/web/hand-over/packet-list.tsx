import { DefinitionRows } from '../look/section.js';
import { Empty } from '../look/notes.js';
import { Fold } from '../look/fold.js';
import { tellInstant } from '../look/tell-instant.js';
import { handOver as say } from '../words/hand-over.js';
import { DeliveryForm } from './delivery-form.js';
import { PacketLinks } from './packet-links.js';
import type { PacketView } from './hand-over-answers.js';

interface PacketListProps {
  readonly id: string;
  readonly packets: readonly PacketView[];
  readonly makes: boolean;
  readonly isCounsel: boolean;
}

/** The packets that were made, the latest first: what is in each, who took it out, who received it. */
export function PacketList({ packets, ...props }: PacketListProps) {
  if (packets.length === 0) {
    return (
      <Empty>
        <p>{say.none}</p>
      </Empty>
    );
  }
  return (
    <>
      {packets.toReversed().map((packet) => (
        <Packet key={packet.id} {...props} packet={packet} />
      ))}
    </>
  );
}

function Packet({ id, packet, makes, isCounsel }: Omit<PacketListProps, 'packets'> & { packet: PacketView }) {
  const {
    recipient,
    name,
    purpose,
    madeAt,
    by,
    head,
    files,
    privileged,
    overrides,
    deliveries,
    looks,
    stamp,
    unstamped,
  } = packet;
  const title = say.packetOf(say.recipients[recipient], name);
  return (
    <article class="packet" aria-label={title}>
      <h3>{title}</h3>
      <p class="quiet">{say.madeBy(tellInstant(madeAt), by.person)}</p>
      <DefinitionRows
        rows={[
          { term: say.terms.purpose, value: purpose },
          { term: say.terms.files, value: files },
          { term: say.terms.head, value: <code>{`${head.size}:${head.root}`}</code> },
          ...(stamp === undefined
            ? []
            : [{ term: say.terms.stamp, value: say.stampOf(tellInstant(stamp.at), stamp.authority) }]),
          ...(unstamped === undefined ? [] : [{ term: say.terms.stamp, value: say.unstamped[unstamped] }]),
          ...overrides.map(({ what, reason }) => ({ term: say.terms.overrides, value: what, about: reason })),
          {
            term: say.terms.looks,
            value:
              looks.length === 0
                ? say.noLooks
                : lines(looks.map((look) => say.lookOf(tellInstant(look.at), look.by.person))),
          },
          {
            term: say.terms.deliveries,
            value:
              deliveries.length === 0
                ? say.noDeliveries
                : lines(deliveries.map(({ to, way, at }) => say.deliveryOf(to, way, tellInstant(at)))),
          },
        ]}
      />
      {privileged && !isCounsel ? (
        <p>{say.privilegedNote}</p>
      ) : (
        <p class="links-line unprinted">
          <a
            href={`/api/incidents/${id}/packets/${packet.id}/archive`}
            download
            aria-label={say.downloadOf(name)}
          >
            {say.download}
          </a>
        </p>
      )}
      <PacketLinks incident={id} packet={packet} makes={makes} />
      {makes && <Fold title={say.deliver}>{() => <DeliveryForm id={id} packet={packet.id} />}</Fold>}
    </article>
  );
}

function lines(all: readonly string[]) {
  return all.map((line) => (
    <span class="line" key={line}>
      {line}
    </span>
  ));
}
