import type { StationNumberDto } from '../../../shared/wire/fleet-station.dto.js';
import type { Thing } from '../lists/field-spec.js';
import { DefinitionRows } from '../look/section.js';
import { places } from '../words/en/places.js';

const { stations: say } = places;

/** Whom to call from a station, in its order; a tap calls. */
export function StationNumbers({ of }: { of: Thing }) {
  const { numbers = [] } = of as { numbers?: readonly StationNumberDto[] };
  if (numbers.length === 0) return null;
  return (
    <>
      <h3>{say.numbers}</h3>
      <DefinitionRows
        rows={numbers.map(({ of: kind, name, phone, channel, note }) => ({
          term: say.ofs[kind],
          value: name,
          about: [channel, note].filter(Boolean).join(' · '),
          ...(phone !== undefined && {
            action: (
              <a class="call-number" href={`tel:${phone}`}>
                {phone}
              </a>
            ),
          }),
        }))}
      />
    </>
  );
}
