import { fetchTimers } from '../timers/openTimers.ts';
import { startTimerClock } from '../timers/startTimerClock.ts';
import { render } from './render.ts';
import { openStore } from './store.ts';

const store = openStore(render);
render(store);
void fetchTimers(store).then(() => startTimerClock(store));
