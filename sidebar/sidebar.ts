import { render } from './page/render.ts';
import { openStore } from './page/store.ts';
import { fetchTimers } from './page/timerActions.ts';
import { startTimerClock } from './page/timerClock.ts';

const store = openStore(render);
render(store);
void fetchTimers(store).then(() => startTimerClock(store));
