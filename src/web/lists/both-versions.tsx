import { Button } from '../look/button.js';
import { Note } from '../look/notes.js';
import { lists as say } from '../words/lists.js';
import { bodyOf } from './draft.js';
import type { Draft, FieldSpec, Thing } from './field-spec.js';
import { toldDifferences } from './told.js';

interface BothProps {
  readonly specs: readonly FieldSpec[];
  readonly draft: Draft;
  readonly current: Thing;
  readonly takeTheirs: () => void;
  readonly sendMine: () => void;
}

/** What stands there now beside what is being written: the person says which. */
export function BothVersions({ specs, draft, current, takeTheirs, sendMine }: BothProps) {
  return (
    <Note kind="error">
      <p>
        <strong>{say.conflict.title}</strong>
      </p>
      <div class="table-box">
        <table>
          <thead>
            <tr>
              <td />
              <th scope="col">{say.conflict.mine}</th>
              <th scope="col">{say.conflict.theirs}</th>
            </tr>
          </thead>
          <tbody>
            {toldDifferences(specs, bodyOf(specs, draft), current).map(({ spec, was, is }) => (
              <tr key={spec.name}>
                <th scope="row">{spec.label}</th>
                <td>{was ?? say.nothing}</td>
                <td>{is ?? say.nothing}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div class="buttons">
        <Button onPress={takeTheirs}>{say.conflict.takeTheirs}</Button>
        <Button onPress={sendMine}>{say.conflict.sendMine}</Button>
      </div>
    </Note>
  );
}
