/** Why a file could not be used and what a person can do about it, without the machine's code for it. */
export interface FailureReason {
  readonly because: string;
  readonly next: string;
}

// Names of errors as POSIX and Node's "Common system errors" list them.
const reasons: Readonly<Record<string, FailureReason>> = {
  ENOENT: {
    because: 'the file or its folder is no longer there',
    next: 'Look whether it was moved or its drive disconnected',
  },
  EACCES: { because: 'you have no permission for it', next: 'Choose another folder, or ask the owner for permission' },
  EPERM: {
    because: 'it is protected or another program holds it',
    next: 'Close it in other programs, or choose another folder',
  },
  EBUSY: { because: 'another program is using it', next: 'Close it in the other program and try again' },
  EROFS: { because: 'its drive can only be read', next: 'Choose a folder on another drive' },
  ENOSPC: { because: 'the disk is full', next: 'Make room, or choose a folder on another drive' },
  EDQUOT: { because: 'your share of the disk is used up', next: 'Make room, or choose a folder on another drive' },
  EFBIG: { because: 'the drive takes no file of this size', next: 'Choose a folder on another drive' },
  EIO: { because: 'the drive reports an error', next: 'Choose a folder on another drive and have this drive checked' },
  EISDIR: { because: 'it is a folder', next: 'Choose a file' },
  ENOTDIR: { because: 'its folder is no longer there', next: 'Choose another folder' },
  ENAMETOOLONG: { because: 'its name is too long', next: 'Choose a shorter name' },
};

const unknownReason: FailureReason = { because: 'the system refused', next: 'Try again, or choose another folder' };

export function reasonOf(failure: unknown): FailureReason {
  const code = failure instanceof Error && 'code' in failure ? String(failure.code) : '';
  return reasons[code] ?? unknownReason;
}
