import type { Known } from '../../../shared/call/known.js';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import type { FactPlace } from './fact-place.js';
import { additionOf, asRecorded, type FactValue, recordedAt, withRecorded } from './fact-value.js';
import type { SectionAnswer } from './service-answers.js';

export type HowKnown = Known<unknown>['known'];

/** An answer that is to go into the record. */
export interface Answer {
  readonly value: FactValue;
  readonly known: HowKnown;
  readonly by: string;
  /** Why what stands there is changed. */
  readonly reason: string;
}

/** The section that a fact is written in, and the way to write it. */
export function useAnswer(incident: string, place: FactPlace) {
  const path = `/api/incidents/${incident}/sections/${place.section}`;
  const { data: section, error, again } = useAsk<SectionAnswer>(path);
  const telling = useTell();
  const stands = section === undefined ? undefined : recordedAt(section.document, place);

  /** True once it is written. Adds where nothing stands, which alters no words of anybody and needs no version; otherwise amends. */
  const save = async ({ value, known, by, reason }: Answer): Promise<boolean> => {
    if (section === undefined) return false;
    const recorded = asRecorded(place, value, known, by);
    const touches = [`/api/incidents/${incident}`];
    const answer =
      stands === undefined
        ? await telling.tell(
            `${path}/additions`,
            { method: 'POST', body: additionOf(place, recorded) },
            touches,
          )
        : await telling.tell(
            path,
            {
              method: 'PUT',
              version: section.version,
              body: { document: withRecorded(section.document, place, recorded), reason: reason.trim() },
            },
            touches,
          );
    if (answer === undefined) again();
    return answer !== undefined;
  };
  return { loaded: section !== undefined, stands, save, again, error, telling };
}

/** What a recorded fact says, with or without how it is known. */
export function valueOfRecorded(recorded: unknown): unknown {
  return typeof recorded === 'object' && recorded !== null && 'value' in recorded ? recorded.value : recorded;
}
