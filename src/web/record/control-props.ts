import type { JsonValue } from '../../../shared/record/json-value.js';

/** What each control is given. */
export interface ControlProps {
  readonly path: string;
  readonly label: string;
  readonly value: JsonValue | undefined;
  readonly onValue: (value: JsonValue | undefined) => void;
  readonly error: string | null;
  readonly hint: string | undefined;
}
