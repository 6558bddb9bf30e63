import { useStore } from '../app/store.js';
import type { ChoiceCraft } from '../call/use-choices.js';
import { Button } from '../look/button.js';
import { Empty } from '../look/notes.js';
import { tellClock } from '../look/tell-instant.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { marked } from './outing-queue.js';

interface DeviceUnitsProps {
  readonly craft: readonly ChoiceCraft[];
  readonly onBack: (unit: string) => void;
  readonly onNotBack: (unit: string) => void;
}

/** The fleet by unit name, on a phone where nobody is signed in: it says what came in, and shows nothing of who is out. */
export function DeviceUnits({ craft, onBack, onNotBack }: DeviceUnitsProps) {
  const latest = useStore(marked);
  if (craft.length === 0) {
    return (
      <Empty>
        <p>{say.device.none}</p>
      </Empty>
    );
  }
  const byName = [...craft].sort((one, other) =>
    one.unitName.localeCompare(other.unitName, 'en', { numeric: true }),
  );
  return (
    <ul class="craft-list">
      {byName.map(({ id, unitName, colours }) => (
        <li class="craft-row" key={id}>
          <div class="craft-what">
            <h2>
              {unitName} <small>{colours.join(', ')}</small>
            </h2>
            {latest?.unit === unitName && <p class="quiet">{say.device.marked(tellClock(latest.at))}</p>}
          </div>
          <Button look="main" label={say.backOf(unitName)} onPress={() => onBack(unitName)}>
            {say.back}
          </Button>
          <div class="links-line craft-links">
            <Button look="plain" label={say.notBackOf(unitName)} onPress={() => onNotBack(unitName)}>
              {say.notBack}
            </Button>
          </div>
        </li>
      ))}
    </ul>
  );
}
