import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { common } from '../words/common.js';
import type { PageProps, PageRoute } from './page-route.js';

/** A page whose code is fetched when it is first opened; without signal and not yet kept, it says so. */
export function LazyPage({ route, params }: { route: PageRoute } & PageProps) {
  const [Loaded, setLoaded] = useState<ComponentType<PageProps> | null>(null);
  const [failed, setFailed] = useState(false);
  const [tries, setTries] = useState(0);
  useEffect(() => {
    let left = false;
    setFailed(false);
    route.load().then(
      (page) => !left && setLoaded(() => page.default),
      () => !left && setFailed(true),
    );
    return () => {
      left = true;
    };
  }, [route, tries]);
  if (Loaded !== null) return <Loaded params={params} />;
  if (!failed)
    return (
      <main id="page" class="page">
        {<Loading />}
      </main>
    );
  return (
    <Page title={route.nav ?? common.deskName}>
      <Note kind="error">
        <p>{common.chunkFailed}</p>
        <Button onPress={() => setTries(tries + 1)}>{common.again}</Button>
      </Note>
    </Page>
  );
}
