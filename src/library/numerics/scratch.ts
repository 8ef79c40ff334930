/**
 * Room to work in that is used again by each call, for lists so large that asking for new ones takes longer than what is
 * done with them. Holds whatever the last call left there, and at least the size asked for.
 */
export function scratch(): (size: number) => Float64Array {
  let room = new Float64Array(0);
  return (size) => {
    if (room.length < size) room = new Float64Array(size);
    return room;
  };
}
