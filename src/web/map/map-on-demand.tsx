import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Loading, Note } from '../look/notes.js';
import { common } from '../words/common.js';
import { map as say } from '../words/map.js';
import type { MapSheetProps } from './map-sheet.js';

/** A map whose code is fetched when it is first shown, so that no page that may show one begins with it. */
export function MapOnDemand(props: MapSheetProps) {
  const [Sheet, setSheet] = useState<ComponentType<MapSheetProps> | null>(null);
  const [failed, setFailed] = useState(false);
  const [tries, setTries] = useState(0);
  useEffect(() => {
    let left = false;
    setFailed(false);
    import('./map-sheet.js').then(
      (loaded) => left || setSheet(() => loaded.default),
      () => left || setFailed(true),
    );
    return () => {
      left = true;
    };
  }, [tries]);
  if (Sheet !== null) return <Sheet {...props} />;
  if (!failed) return <Loading what={say.loading} />;
  return (
    <Note kind="error">
      <p>{say.failed}</p>
      <Button onPress={() => setTries(tries + 1)}>{common.again}</Button>
    </Note>
  );
}
