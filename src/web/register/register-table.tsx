import { Link } from 'wouter-preact';
import { register as say } from '../words/register.js';
import { Clock, Reports, When } from './line-parts.js';
import type { ListProps } from './register-list.js';
import { aboutOf, whatOf, whereOf } from './tell-line.js';

/** The whole sheet at a desk and on paper. */
export function RegisterTable({ lines, zone }: Omit<ListProps, 'map'>) {
  const { reference, what, where, when, clock, duty, tasks, status } = say.columns;
  const columns = [reference, what, where, when, clock, duty, tasks, status];
  return (
    <div class="table-box" tabIndex={0} role="region" aria-label={say.columns.what}>
      <table class="register-table">
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.id}>
              <th scope="row">
                <Link class="register-link" href={`/incidents/${line.id}`}>
                  {line.reference}
                </Link>
              </th>
              <td>
                <strong>{whatOf(line)}</strong>
                <br />
                {aboutOf(line)}
              </td>
              <td>{whereOf(line) ?? <span class="quiet">{say.whereUnknown}</span>}</td>
              <td>
                <When line={line} zone={zone} />
              </td>
              <td>
                <Clock duties={line.duties} zone={zone} />
              </td>
              <td>
                <Reports duties={line.duties} />
              </td>
              <td>{say.tasks(line.tasks.open, line.tasks.overdue)}</td>
              <td>{say.statuses[line.status]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
