import type { AskError } from '../ask/ask-error.js';
import { Note } from '../look/notes.js';
import { outAndBack as say } from '../words/out-and-back.js';

/** What stops a list, as somebody needs it who has the spreadsheet before them: the row, the column, the fix. */
export function RowFaults({ error }: { error: AskError }) {
  return (
    <>
      <Note kind="error">
        <strong>{say.list.faults(error.errors.length)}</strong>
      </Note>
      <div class="table-box" role="region" aria-label={say.list.fix} tabIndex={0}>
        <table class="row-faults">
          <thead>
            <tr>
              <th scope="col">{say.list.row}</th>
              <th scope="col">{say.list.column}</th>
              <th scope="col">{say.list.fix}</th>
            </tr>
          </thead>
          <tbody>
            {error.errors.map(({ pointer, detail }) => {
              const [, row = '', member = ''] = /^\/rows\/(\d+)\/?(.*)$/.exec(pointer) ?? [];
              return (
                <tr key={`${pointer} ${detail}`}>
                  <td>{row}</td>
                  <td>{member === '' ? say.list.whole : (say.fields[member] ?? member)}</td>
                  <td>{detail.replace(/^Row \d+, [^:]+: /, '')}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </>
  );
}
