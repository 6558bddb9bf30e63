import { Button } from './button.js';
import { common } from '../words/common.js';

export function PrintButton() {
  return (
    <Button look="plain" onPress={() => print()}>
      {common.print}
    </Button>
  );
}
