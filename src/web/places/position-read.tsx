import type { Thing } from '../lists/field-spec.js';
import { Note } from '../look/notes.js';
import { DefinitionRows } from '../look/section.js';
import { places as say } from '../words/en/places.js';

interface Read {
  readonly latitude?: number;
  readonly longitude?: number;
  readonly positionReading?: {
    readonly precisionM: number;
    readonly remarks: readonly { readonly code: string; readonly detail: string }[];
  };
}

/** A position as it was understood, with what is odd about it. */
export function PositionRead({ of }: { of: Thing }) {
  const { latitude, longitude, positionReading } = of as Read;
  if (latitude === undefined || longitude === undefined || positionReading === undefined) return null;
  return (
    <>
      <DefinitionRows
        rows={[
          {
            term: say.inDegrees,
            value: say.degrees(latitude.toFixed(5), longitude.toFixed(5)),
            about: say.precision(positionReading.precisionM.toPrecision(2)),
          },
        ]}
      />
      {positionReading.remarks.map(({ code, detail }) => (
        <Note key={code}>{detail}</Note>
      ))}
    </>
  );
}
