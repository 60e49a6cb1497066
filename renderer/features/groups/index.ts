export { Groups } from './Groups.tsx';
export { GroupsShelf } from './GroupsShelf.tsx';
