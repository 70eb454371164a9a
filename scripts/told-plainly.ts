// What a host typed wrong, or what the store refuses, is said in its words alone; where it came up in the
// code helps nobody who types a command.
process.on('uncaughtException', (error) => {
  console.error(error.message);
  process.exit(1);
});
