import { openStore, rollBack } from '../src/lib/server/store';
import { storeThere } from './store-there';
import './told-plainly';

// With the server stopped, and before the older program is put in place.
const store = await openStore({ ...storeThere(process.env), isPatient: true });
try {
  console.log(`${await rollBack(store.db)} was taken back. Now start the version before this one.`);
} finally {
  await store.close();
}
