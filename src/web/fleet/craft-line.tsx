import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Sign } from '../look/sign.js';
import { tellDay } from '../lists/tell-day.js';
import { fleet as say } from '../words/fleet.js';
import type { Craft, CraftService } from './craft-answers.js';
import { typeLabel } from './craft-specs.js';

/** One craft of the list: its name, whether it may go out, and what keeps it in. */
export function CraftLine({ craft }: { craft: Craft }) {
  const { id, unitName, type, colours = [], registrationNumber, inService = true, retiredOn } = craft;
  // Few are out; of those, why matters more than anything else.
  const service = useAsk<CraftService>(inService ? null : `/api/craft/${id}/service`, { keep: true });
  const why = service.data === undefined ? [] : whyOut(service.data);
  return (
    <Link href={`/fleet/${id}`}>
      <span class="thing-name">{unitName}</span>
      <span class="thing-state">
        <Sign of={inService ? 'yes' : 'no'} />
        {inService ? say.inService : say.out}
      </span>
      <span class="thing-about">
        {[typeLabel(type), colours.join(', '), registrationNumber].filter(Boolean).join(' · ')}
        {retiredOn !== undefined && ` · ${say.left(tellDay(retiredOn))}`}
      </span>
      {why.map((words) => (
        <span class="thing-about" key={words}>
          <strong>{words}</strong>
        </span>
      ))}
    </Link>
  );
}

/** Every reason to keep it in, the agency's first. */
function whyOut({ holds, heldByAgency, doNotStart }: CraftService): string[] {
  return [
    ...(heldByAgency === null ? [] : [say.service.heldBy(heldByAgency.agency)]),
    ...holds.map(
      ({ incident, reason }) => `${incident === null ? say.service.upkeep : say.service.incident}: ${reason}`,
    ),
    ...doNotStart.map((reason) => `${say.service.doNotStart}: ${reason}`),
  ];
}
