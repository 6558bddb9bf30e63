import { Link } from 'wouter-preact';
import { Button } from '../look/button.js';
import { register as say } from '../words/register.js';
import { Clock, Reports, When } from './line-parts.js';
import type { RegisterLine } from './register-answers.js';
import { aboutOf, whatOf, whereOf } from './tell-line.js';

export interface ListProps {
  readonly lines: readonly RegisterLine[];
  readonly zone: string;
  /** While the map is there: what number an incident has on it, which one is picked, and how to pick. */
  readonly map?: {
    readonly numberOf: (id: string) => number | null;
    readonly picked: string | null;
    readonly pick: (id: string) => void;
  };
}

/** A line each, for one hand and for the place beside the map. */
export function RegisterList({ lines, zone, map }: ListProps) {
  return (
    <ol class="register-list">
      {lines.map((line) => (
        <li key={line.id} {...(map?.picked === line.id && { class: 'picked' })} id={`line-${line.id}`}>
          <Link class="register-link" href={`/incidents/${line.id}`}>
            <span class="reference">{line.reference}</span> <strong>{whatOf(line)}</strong>
          </Link>
          <p>{aboutOf(line)}</p>
          <p class="quiet">
            {whereOf(line) ?? say.whereUnknown} · <When line={line} zone={zone} /> ·{' '}
            {say.statuses[line.status]}
          </p>
          <div class="line-state">
            <Reports duties={line.duties} />
            <Clock duties={line.duties} zone={zone} />
          </div>
          {map !== undefined && <OnMap line={line} map={map} />}
        </li>
      ))}
    </ol>
  );
}

function OnMap({ line, map }: { line: RegisterLine; map: NonNullable<ListProps['map']> }) {
  const number = map.numberOf(line.id);
  if (number === null) return null;
  return (
    <div>
      <Button pressed={map.picked === line.id} onPress={() => map.pick(line.id)}>
        <span class="pin-number">{number}</span> {say.map.find(line.reference)}
      </Button>
    </div>
  );
}
