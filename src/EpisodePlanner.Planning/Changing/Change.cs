using System.Text.Json.Serialization;

namespace EpisodePlanner.Planning;

/// <summary>
/// One change to a workshop, as it is asked for, stored and undone. The kinds are those of this assembly; each has the
/// name under <c>kind</c> by which it is written.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(NameChange), "name")]
[JsonDerivedType(typeof(ZoneChange), "zone")]
[JsonDerivedType(typeof(SettingsChange), "settings")]
[JsonDerivedType(typeof(PersonChange), "person")]
[JsonDerivedType(typeof(MachineChange), "machine")]
[JsonDerivedType(typeof(PlaceChange), "place")]
[JsonDerivedType(typeof(SeriesChange), "series")]
[JsonDerivedType(typeof(TaskChange), "task")]
[JsonDerivedType(typeof(EpisodeChange), "episode")]
[JsonDerivedType(typeof(SlotRuleChange), "slotRule")]
[JsonDerivedType(typeof(UploadChange), "upload")]
[JsonDerivedType(typeof(LogChange), "logEntry")]
[JsonDerivedType(typeof(ToldDateChange), "toldDate")]
[JsonDerivedType(typeof(ToldDateTakenBack), "toldDateTakenBack")]
[JsonDerivedType(typeof(TimedLineChange), "timedLine")]
[JsonDerivedType(typeof(BookingChange), "booking")]
[JsonDerivedType(typeof(AcceptedPlanChange), "acceptedPlan")]
[JsonDerivedType(typeof(Batch), "batch")]
public abstract record Change
{
    private protected Change()
    {
    }

    /// <summary>Makes the change without looking at the rules; null, with reasons, where it makes no sense.</summary>
    internal abstract Step? Take(Workshop workshop, ReasonList reasons);
}

/// <summary>A change that was made: the workshop after it, and the change that leads back.</summary>
internal sealed record Step(Workshop After, Change Inverse);
