import { execFileSync } from 'node:child_process';

/** Builds dist/ once before all tests: many of them drive the built add-on, and a fresh clone has none. */
export function setup(): void {
  execFileSync(process.execPath, ['--import', 'tsx', 'scripts/build.ts'], { stdio: 'inherit' });
}
