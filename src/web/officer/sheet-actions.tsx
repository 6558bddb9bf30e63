import { Button } from '../look/button.js';
import { common } from '../words/common.js';
import { officer as say } from '../words/officer.js';

/** In thumb's reach: to the note that the sheet was given, and to the printer. */
export function SheetActions() {
  const toNote = (): void => {
    const heading = document.querySelector<HTMLElement>('#give h2');
    heading?.scrollIntoView();
    heading?.focus();
  };
  return (
    <div class="sheet-actions">
      <Button look="main" onPress={toNote}>
        {say.give.title}
      </Button>
      <Button onPress={() => print()}>{common.print}</Button>
    </div>
  );
}
