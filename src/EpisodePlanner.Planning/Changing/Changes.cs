namespace EpisodePlanner.Planning;

/// <summary>The only way in which a workshop changes.</summary>
public static class Changes
{
    /// <summary>
    /// Makes a change, whoever asks for it: a form, the API, an import, an undo, a draft. The workshop that comes out
    /// keeps every rule of <see cref="WorkshopRules"/>; what would break one is refused with all reasons.
    /// </summary>
    /// <param name="workshop">The workshop before; it keeps every rule.</param>
    /// <param name="change">The change.</param>
    public static ChangeResult Apply(Workshop workshop, Change change)
    {
        var reasons = new ReasonList();
        var step = change.Take(workshop, reasons);
        if (step is not null)
        {
            WorkshopRules.Check(step.After, workshop, reasons);
        }

        return reasons.IsEmpty && step is not null
            ? new Applied(step.After, step.Inverse)
            : new Refused(reasons.ToValueList());
    }
}
