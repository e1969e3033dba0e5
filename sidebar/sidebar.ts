import { render } from './page/render.ts';
import { openStore } from './page/store.ts';

render(openStore(render));
