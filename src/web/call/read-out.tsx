import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Dialog } from '../look/dialog.js';
import { common } from '../words/common.js';
import { call as say } from '../words/call.js';
import type { CallDraft } from './call-draft.js';
import { CallBack } from './call-back.js';
import { decimalsOfWhere, nearestOf, positionOfWhere, tellWhere } from './tell-where.js';
import type { Choices } from './use-choices.js';

/** Everything that a dispatcher asks, in the order in which it is asked, large enough to read out at arm's length. */
export function ReadOut({ draft, choices }: { draft: CallDraft; choices: Choices }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button look="main" onPress={() => setOpen(true)}>
        {say.readOut.open}
      </Button>
      {open && (
        <Dialog title={say.readOut.open} onClose={() => setOpen(false)}>
          <Card draft={draft} choices={choices} />
        </Dialog>
      )}
    </>
  );
}

function Card({ draft: { answers }, choices }: { draft: CallDraft; choices: Choices }) {
  const where = answers.where?.value;
  const near = where && nearestOf(where, choices.places);
  const stations = choices.stations.filter(({ address }) => address !== null);
  const ramp =
    (where && nearestOf(where, stations)?.thing) ?? (stations.length === 1 ? stations[0] : undefined);
  const names = answers.craft?.value ?? [];
  const kind = answers.happened?.value;
  const position = where && positionOfWhere(where);
  const lines: [term: string, ...values: (string | null | undefined)[]][] = [
    [say.readOut.position, position, where && decimalsOfWhere(where)],
    [say.readOut.near, where && position === null ? tellWhere(where) : (where?.asSaid ?? near?.words)],
    [say.readOut.craft, ...names.map((name) => withColours(name, choices))],
    [say.readOut.people, answers.people && say.people.count(answers.people.value)],
    [say.readOut.missing, answers.accounted && common.answer[answers.accounted.value]],
    [say.readOut.hurt, answers.hurt && common.answer[answers.hurt.value]],
    [say.readOut.what, kind ? say.happened.kinds[kind] : undefined, answers.said?.value],
    [say.readOut.ramp, ramp && `${ramp.name}, ${ramp.address}`],
  ];
  return (
    <>
      <dl class="read-out">
        {lines.map(([term, ...values]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{values.filter(Boolean).join(`, ${say.readOut.or} `) || say.readOut.unknown}</dd>
          </div>
        ))}
      </dl>
      <CallBack />
    </>
  );
}

function withColours(name: string, { craft }: Choices): string {
  const colours = craft.find(({ unitName }) => unitName === name)?.colours ?? [];
  return colours.length === 0 ? name : `${name} (${colours.join(', ')})`;
}
