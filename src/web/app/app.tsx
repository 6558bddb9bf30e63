import { QueryClientProvider } from '@tanstack/preact-query';
import { Route, Switch } from 'wouter-preact';
import { queryClient } from '../ask/query-client.js';
import { Page } from '../look/page.js';
import { SignInAgain } from '../session/sign-in-again-dialog.js';
import { common } from '../words/common.js';
import { Frame } from './frame.js';
import { GuardedPage } from './guarded-page.js';
import { ROUTES } from './routes.js';

export function App() {
  return (
    <QueryClientProvider client={queryClient}>
      <Frame>
        <Switch>
          {ROUTES.map((route) => (
            <Route key={route.path} path={route.path}>
              {(params: Readonly<Record<string, string>>) => <GuardedPage route={route} params={params} />}
            </Route>
          ))}
          <Route>
            <NotFound />
          </Route>
        </Switch>
      </Frame>
      <SignInAgain />
    </QueryClientProvider>
  );
}

function NotFound() {
  return (
    <Page title={common.notFound.title}>
      <p>{common.notFound.text}</p>
    </Page>
  );
}
