// Loaded into a process before its own program: answers its parent's "processor time" with what it has used.
process.on("message", (message) => {
  if (message !== "processor time") return;
  const { user, system } = process.cpuUsage();
  process.send?.({ processorSeconds: (user + system) / 1e6 });
});
