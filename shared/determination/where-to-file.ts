import { STATE_NAMES } from '../place/state-codes.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import type { Destination } from './determination.js';

/**
 * With which state the federal report is filed (33 CFR 173.59): that of the vessel's number (without a number, of its
 * principal use), or that of the occurrence where it happened outside it. Either satisfies the federal rule, so both are
 * named; there is no federal office to look for. A state's own duty stands beside it.
 * @example whereToFile({ vessels: [{ id: 'PWC 7', stateOfNumber: 'TX', … }] }, ['OK'])[0].text
 * // 'Accident report, federal rule, filed with Texas'
 */
export function whereToFile(
  { vessels }: Pick<IncidentFacts, 'vessels'>,
  occurredIn: readonly string[],
): Destination[] {
  return vessels.flatMap(({ id, stateOfNumber, numbered }) => {
    const elsewhere = occurredIn.filter((state) => state !== stateOfNumber);
    const byNumber: Destination =
      stateOfNumber === undefined
        ? {
            vessel: id,
            state: null,
            text:
              numbered === 'no'
                ? 'Accident report, federal rule, filed with the state where the vessel is mainly used'
                : 'Accident report, federal rule, filed with the state that numbered the vessel',
            because: `${id} ${numbered === 'no' ? 'has no number' : 'has a number of a state that nobody has stated'} (33 CFR 173.59).`,
          }
        : filedWith(id, stateOfNumber, `That state numbered ${id} (33 CFR 173.59).`);
    return [
      byNumber,
      ...elsewhere.map((state) =>
        filedWith(id, state, 'It may have happened there, outside the state of number (33 CFR 173.59).'),
      ),
    ];
  });
}

function filedWith(vessel: string, state: string, because: string): Destination {
  const name = STATE_NAMES[state] ?? state;
  return { vessel, state, text: `Accident report, federal rule, filed with ${name}`, because };
}
