import { useState } from 'preact/hooks';
import { parsePosition } from '../../../shared/place/parse-position.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { call as say } from '../words/call.js';
import type { Where } from './call-draft.js';
import { positionOfWhere } from './tell-where.js';
import { WhereOnMap } from './where-on-map.js';
import type { ChoicePlace, Choices } from './use-choices.js';

interface WhereElseProps {
  readonly choices: Choices;
  readonly keep: (where: Where, words: string) => void;
}

/** A named place, coordinates in any usual notation, plain words, or a tap on the map. */
export function WhereElse({ choices, keep }: WhereElseProps) {
  const { places } = choices;
  const [typed, setTyped] = useState('');
  const [onMap, setOnMap] = useState(false);
  const reading = typed.trim() === '' ? null : parsePosition(typed);
  const keepPlace = ({ id, name, latitude, longitude }: ChoicePlace): void =>
    keep(
      {
        how: 'place',
        placeId: id,
        asSaid: name,
        ...(latitude !== null && longitude !== null && { latitude, longitude }),
      },
      name,
    );
  const keepTyped = (): void => {
    if (reading?.ok === true) {
      const { latitude, longitude } = reading;
      keep({ how: 'written', latitude, longitude, asSaid: typed.trim() }, typed.trim());
    } else keep({ how: 'words', asSaid: typed.trim() }, typed.trim());
  };
  return (
    <>
      {places.length > 0 && (
        <div class="tiles" role="group" aria-label={say.where.place}>
          {places.map((place) => (
            <Button key={place.id} onPress={() => keepPlace(place)}>
              <span class="tile-name">{place.name}</span>
            </Button>
          ))}
        </div>
      )}
      <Field
        label={say.where.written}
        hint={say.where.writtenHint}
        value={typed}
        onInput={setTyped}
        autoComplete="off"
      />
      {reading?.ok === true && (
        <p class="quiet">
          {positionOfWhere({ how: 'written', ...reading })}{' '}
          {reading.remarks.map(({ detail }) => detail).join(' ')}
        </p>
      )}
      {typed.trim() !== '' && (
        <Button look="main" onPress={keepTyped}>
          {say.where.keep}
        </Button>
      )}
      {onMap ? (
        <WhereOnMap choices={choices} keep={keep} />
      ) : (
        <Button onPress={() => setOnMap(true)}>{say.where.map}</Button>
      )}
    </>
  );
}
