import { brokenArrows } from './rooms/brokenArrows.ts';
import { crowdedFolders, farHelpers, namesTwice, strangeNames } from './rooms/crowdedFolders.ts';
import { importCircles } from './rooms/importCircles.ts';
import { journey } from './rooms/journey.ts';
import { projectFiles, readTree } from './rooms/readTree.ts';
import { ROOMS } from './rooms/rooms.ts';

// Without an option: fails on whatever breaks the order of the rooms.
// --count [ROOT] counts what makes a tree hard to enter; --journey FILE … lists what one opens from there.
const [option, ...rest] = process.argv.slice(2);
const root = option === '--count' ? (rest[0] ?? '.') : '.';
const files = await projectFiles(root);
const tree = readTree(root, files);
const say = (line: string) => process.stdout.write(`${line}\n`);

if (option === '--count') {
  const own = [...tree.values()].filter(({ path }) => !path.startsWith('tests/'));
  const lines = (list: typeof own) => list.reduce((sum, one) => sum + one.lines, 0);
  say(`files ${own.length} and ${tree.size - own.length} of tests`);
  say(`lines ${lines(own)} and ${lines([...tree.values()]) - lines(own)} of tests`);
  say(`folders over 24 files ${crowdedFolders(files).length}`);
  say(`files with one importer, in another folder ${farHelpers(tree).length}`);
  say(`names exported twice in shared ${namesTwice(tree).length}`);
  say(`files named after none of their exports ${strangeNames(tree).length}`);
  say(`circles of files ${importCircles(tree).length}`);
} else if (option === '--journey') {
  for (const [room, paths] of journey(tree, rest))
    say(`${room} ${paths.length}\n  ${paths.join('\n  ')}`);
} else {
  const broken = [
    ...brokenArrows(tree, ROOMS),
    ...importCircles(tree).map((circle) => `files in a circle: ${circle.join(', ')}`),
    ...crowdedFolders(files),
    ...namesTwice(tree),
    ...strangeNames(tree).map((path) => `${path} is named after none of its exports`),
  ];
  for (const line of broken) process.stderr.write(`${line}\n`);
  if (broken.length > 0) process.exitCode = 1;
}
