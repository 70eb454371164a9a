// npm puts a shell between itself and us, and a signal sent to npm ends the two but never gets here.
// So we notice that our parent is gone and take that as the signal. Started without npm, a parent may
// well leave us behind on purpose.
const lookMs = 100;

const parent = process.ppid;
if (process.env.npm_lifecycle_event) {
  const look = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(look);
    process.kill(process.pid, 'SIGTERM');
  }, lookMs);
  look.unref();
}
