import { fetchTimers } from '../timers/timerActions.ts';
import { startTimerClock } from '../timers/timerClock.ts';
import { render } from './render.ts';
import { openStore } from './store.ts';

const store = openStore(render);
render(store);
void fetchTimers(store).then(() => startTimerClock(store));
