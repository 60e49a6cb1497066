/** How shots are set, taken in hand and numbered on the face. */
export function FaceHint() {
  return (
    <p className="tick-note face-hint">
      Click to set a shot; click on a hole to take that shot in hand, and again to set another in the same hole. Pull it to move
      it, right-click to leave it out. Type an arrow’s number to number it; the next ones count on. Arrow keys move the shot in
      hand 1 mm, with Shift 5; N begins the next end.
    </p>
  );
}
