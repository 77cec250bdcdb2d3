/** Preloaded into the VS Code server: when the launcher dies in any way, its end of this pipe closes and the server goes too. */
if (process.env.VSCODE_HOST_GUARD === String(process.ppid)) {
  const leave = () => process.exit(0);
  process.stdin.on('end', leave).on('error', leave).resume();
}
