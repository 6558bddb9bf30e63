import type { Rung } from '../../../shared/outing/not-back.js';
import { notBack as say } from '../words/not-back.js';
import { peopleOf } from './search-rows.js';
import type { NotBackHere } from './use-not-back.js';

interface Way {
  readonly name: string;
  readonly phone?: string | undefined;
  readonly channel?: string | undefined;
}

const STATION_NUMBERS: Readonly<Partial<Record<Rung, readonly string[]>>> = {
  sheriff: ['dispatch', 'wardens'],
  'coast-guard': ['coast-guard'],
};

/** Who is called on a rung, each by a tap; a channel is told, since a phone cannot call it. */
export function RungCalls({ rung, here }: { rung: Rung; here: NotBackHere }) {
  const ways = waysOf(rung, here);
  if (ways.length === 0) {
    if (rung !== 'sheriff') return null;
    return (
      <>
        <p class="hint">{say.ladder.noNumber}</p>
        <div class="call-list unprinted">
          <a class="button" href="tel:911">
            {say.ladder.call911}
          </a>
        </div>
      </>
    );
  }
  return (
    <div class="call-list">
      {ways.map(({ name, phone, channel }) =>
        phone === undefined ? (
          <p key={name}>{say.ladder.channel(name, channel ?? '')}</p>
        ) : (
          <a class="button" key={`${name} ${phone}`} href={`tel:${phone}`}>
            {say.ladder.call(name, phone)}
          </a>
        ),
      )}
    </div>
  );
}

function waysOf(rung: Rung, here: NotBackHere): readonly Way[] {
  if (rung === 'call-renter') return peopleOf(here).filter(({ phone }) => phone !== undefined);
  const of = STATION_NUMBERS[rung] ?? [];
  return here.stations.flatMap(({ numbers }) => numbers.filter((number) => of.includes(number.of)));
}
