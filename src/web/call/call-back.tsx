import { useEffect, useState } from 'preact/hooks';
import { find, keep } from '../device/sealed-store.js';
import { call as say } from '../words/call.js';
import { KeptField } from './kept-field.js';

const KEPT_AS = 'call-back';

/** The number of this phone, which a dispatcher asks for and nobody knows by heart: typed once, kept on it. */
export function CallBack() {
  const [number, setNumber] = useState<string | null>(null);
  useEffect(() => {
    find<string>('self', KEPT_AS).then(
      (found) => setNumber(found ?? ''),
      () => setNumber(''),
    );
  }, []);
  const keepNumber = (value: string): void => {
    setNumber(value);
    keep('self', KEPT_AS, value).catch((error: unknown) => console.warn('The number was not kept.', error));
  };
  if (number === null) return null;
  return (
    <>
      {number !== '' && (
        <dl class="read-out">
          <div>
            <dt>{say.readOut.callBack}</dt>
            <dd>{number}</dd>
          </div>
        </dl>
      )}
      <KeptField
        label={say.readOut.callBackField}
        hint={say.readOut.callBackHint}
        type="tel"
        value={number}
        onKeep={keepNumber}
      />
    </>
  );
}
