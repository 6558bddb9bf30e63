import { Button } from '../look/button.js';
import { handOver as say } from '../words/hand-over.js';
import type { FieldView } from './hand-over-answers.js';

interface TurnButtonProps {
  readonly name: string;
  readonly does: FieldView['does'];
  readonly onTurn: (does: 'goes' | 'stays') => void;
}

/** The other of two: what leaves is held back, and what is masked or stays is let go. */
export function TurnButton({ name, does, onTurn }: TurnButtonProps) {
  return does === 'goes' ? (
    <Button look="plain" label={say.holdAllBack(name)} onPress={() => onTurn('stays')}>
      {say.holdBack}
    </Button>
  ) : (
    <Button look="plain" label={say.letAllGo(name)} onPress={() => onTurn('goes')}>
      {say.letGo}
    </Button>
  );
}
