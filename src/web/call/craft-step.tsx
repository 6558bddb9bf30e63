import { useState } from 'preact/hooks';
import { matchCraft } from '../../../shared/call/match-craft.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { call as say } from '../words/call.js';
import { callInRecord } from '../words/en/call-in-record.js';
import type { CallHands } from './use-call.js';
import type { ChoiceCraft, Choices } from './use-choices.js';

/** Which craft: by a tap, or by whatever the caller says of it; several are several. */
export function CraftStep({ hands, choices: { craft } }: { hands: CallHands; choices: Choices }) {
  const [typed, setTyped] = useState('');
  const chosen = hands.draft?.answers.craft?.value ?? [];
  const likely = typed.trim() === '' ? [] : matchCraft(typed, craft).map((match) => match.craft);
  const shown = likely.length > 0 ? likely : craft;
  const toggle = (name: string): void =>
    hands.answer('craft', chosen.includes(name) ? chosen.filter((one) => one !== name) : [...chosen, name]);
  const keepAsSaid = (): void => {
    if (!chosen.includes(typed.trim())) toggle(typed.trim());
    setTyped('');
  };
  return (
    <>
      <Field
        label={say.craft.type}
        hint={craft.length === 0 ? say.craft.none : say.craft.hint}
        value={typed}
        onInput={setTyped}
        type="search"
        autoComplete="off"
      />
      {typed.trim() !== '' && <Button onPress={keepAsSaid}>{say.craft.add(typed.trim())}</Button>}
      <div class="tiles" role="group" aria-label={likely.length > 0 ? say.craft.likely : say.craft.all}>
        {shown.map((one) => (
          <CraftTile
            key={one.id}
            craft={one}
            chosen={chosen.includes(one.unitName)}
            onPress={() => toggle(one.unitName)}
          />
        ))}
      </div>
      {chosen.length > 0 && (
        <Button look="main" onPress={() => hands.pass('craft', callInRecord.craft(chosen.join(', ')))}>
          {say.next}
        </Button>
      )}
    </>
  );
}

function CraftTile({ craft, chosen, onPress }: { craft: ChoiceCraft; chosen: boolean; onPress: () => void }) {
  return (
    <Button pressed={chosen} onPress={onPress}>
      <span class="tile-name">{craft.unitName}</span>
      {craft.colours.length > 0 && <small>{craft.colours.join(', ')}</small>}
    </Button>
  );
}
