"""Become a program that ends when its parent ends, as another account where one is named.

Run as a script, without this project or any package on its path:
``tether.py SIGNAL PARENT UID GID PROGRAM ARGUMENTS...`` (UID and GID ``-`` for the present account).
"""

import ctypes
import os
import sys

PR_SET_PDEATHSIG = 1  # Linux, <sys/prctl.h>


def main(signal: str, parent: str, uid: str, gid: str, *command: str) -> None:
    if uid != "-":
        os.setgroups([])
        os.setgid(int(gid))
        os.setuid(int(uid))
    if sys.platform == "linux":
        # After the change of account, which clears it.
        ctypes.CDLL(None).prctl(PR_SET_PDEATHSIG, int(signal))
    if os.getppid() != int(parent):
        sys.exit("The parent ended before its child began.")
    os.execv(command[0], command)  # noqa: S606 - becomes the program itself; a shell in between would survive it


if __name__ == "__main__":
    main(*sys.argv[1:])
