using System.Text.Json;
using EpisodePlanner.Planning.Files.Shapes;
using EpisodePlanner.Planning.Files.WorkLines;

namespace EpisodePlanner.Planning.Files;

/// <summary>From the root of a document in the current format to a workshop that holds every rule.</summary>
internal static class WorkshopReader
{
    /// <summary>The workshop, or everything that is wrong with its form and with its sense.</summary>
    public static ReadResult<Workshop> Read(JsonElement root)
    {
        var reading = new Reading();
        var asRead = (Workshop)ShapeFactory.Record<Workshop>().Read(root, reading);
        if (root.ValueKind != JsonValueKind.Object)
        {
            return new(reading.Reasons());
        }

        var origins = new Origins(reading);
        var workshop = WorkLineExpansion.Expand(ImportCompletion.Complete(asRead), reading, origins);
        if (!reading.HasNameless && !reading.IsFull)
        {
            CheckRules(workshop, reading, origins);
        }

        return reading.Count > 0 ? new(reading.Reasons()) : new(WorkshopFile.Order(workshop));
    }

    private static void CheckRules(Workshop workshop, Reading reading, Origins origins)
    {
        foreach (var reason in WorkshopRules.Check(workshop))
        {
            if (reading.IsFull)
            {
                reading.CountOneMore();
                continue;
            }

            var where = origins.InFile(workshop, reason.Where, out var value);
            reading.TellUnlessDamaged(reason with { Where = where }, standsAlone: value is Id);
        }
    }
}
