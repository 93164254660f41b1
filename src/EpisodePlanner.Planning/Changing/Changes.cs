namespace EpisodePlanner.Planning;

/// <summary>The only way in which a workshop changes.</summary>
public static class Changes
{
    /// <summary>
    /// Makes a change, whoever asks for it: a form, the API, an import, an undo, a draft. The workshop that comes out
    /// keeps every rule of <see cref="WorkshopRules"/>; what would break one is refused with all reasons. An entry of the
    /// log that destroys a missing shot marks it lost in the same change (<see cref="Applied.Made"/>).
    /// </summary>
    /// <param name="workshop">The workshop before; it keeps every rule.</param>
    /// <param name="change">The change.</param>
    public static ChangeResult Apply(Workshop workshop, Change change)
    {
        var reasons = new ReasonList();
        if (change.Take(workshop, reasons) is not { } tried)
        {
            return new Refused(reasons.ToValueList());
        }

        var made = LostShots.Following(change, workshop, tried.After);
        var step = ReferenceEquals(made, change) ? tried : made.Take(workshop, reasons)!;
        WorkshopRules.Check(step.After, workshop, reasons);
        return reasons.IsEmpty
            ? new Applied(step.After, LostShots.Keeping(step.Inverse, step.After, workshop)) { Made = made }
            : new Refused(reasons.ToValueList());
    }

    /// <summary>
    /// Makes a change again that was made before, from just this workshop: the rules held then, and aren't looked at.
    /// </summary>
    /// <param name="workshop">The workshop from which the change was made.</param>
    /// <param name="change">The change.</param>
    /// <returns>The workshop after it; null where the change can't have been made from this one.</returns>
    public static Workshop? Replay(Workshop workshop, Change change) => change.Take(workshop, new ReasonList())?.After;
}
