using EpisodePlanner.Web.Features.Editing;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.Setup;

/// <summary>The workshop itself: its settings, slots, bookings and timed lines.</summary>
internal static class SetupEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapSetup(this RouteGroupBuilder desk)
    {
        desk.MapGet("/settings", Show);
        desk.MapGet("/settings/{part}", Edit);
        desk.MapPost("/settings/{part}", Save);
    }

    private static async Task<IResult> Show(FoundDesk found, Desk desk, CancellationToken stop) =>
        Shown.As<SettingsPage>((nameof(SettingsPage.View), await desk.Weighed(found.Now, found.Done, wait: true, stop)));

    private static IResult Edit(FoundDesk found, string part) => Find(part) is { } editable
        ? Shown.As<EditPage>((nameof(EditPage.Model), Editor.Show(found, editable, Path(found, part))))
        : Results.LocalRedirect(found.Paths.Settings);

    private static async Task<IResult> Save(
        FoundDesk found, string part, IFormCollection form, Editor editor, CancellationToken stop) => Find(part) is { } editable
        ? EditEndpoints.Answer(await editor.Save(found, editable, Path(found, part), new SentForm(form), stop))
        : Results.LocalRedirect(found.Paths.Settings);

    private static Editable? Find(string part) => part switch
    {
        "all" => new EditableSettings(),
        "about" => new EditableAbout(),
        _ => null,
    };

    private static string Path(FoundDesk found, string part) => $"{found.Paths.Settings}/{part}";
}
