import type { HistoryGroup } from '../../../shared/patterns/incident-history.js';
import { type AmountSum, tellSum } from '../../../shared/report/sum-amounts.js';
import { renewal as say } from '../words/renewal.js';

/** One grouping of the history; what nobody knows has a column of its own. */
export function HistoryTable({ title, groups }: { title: string; groups: readonly HistoryGroup[] }) {
  const { columns } = say;
  return (
    <div class="table-box" tabIndex={0} role="group" aria-label={title}>
      <table>
        <thead>
          <tr>
            {Object.values(columns).map((heading) => (
              <th scope="col" key={heading}>
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {groups.map(({ name, incidents, people, unlisted, damage, paid }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{incidents}</td>
              <td>{people.hurt}</td>
              <td>{people.died}</td>
              <td>{people.missing}</td>
              <td>{unlisted === 0 ? people.unknown : say.open(people.unknown, unlisted)}</td>
              <td>{tellDamage(damage)}</td>
              <td>{paid === null ? say.notEntered : tellSum(paid)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Nothing entered is no damage of nothing. */
export function tellDamage(damage: AmountSum): string {
  return damage.high === 0 && damage.unknown === 0 ? say.notEntered : tellSum(damage);
}
