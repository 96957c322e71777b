/** Counts what this process has of the processor from now on, in ms: on a busy machine the clock counts what others do, too. */
export function ownTime(): () => number {
  const begun = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  };
}
