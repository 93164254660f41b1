using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;

#nullable disable

namespace EpisodePlanner.Data.PostgreSql.Migrations
{
    /// <inheritdoc />
    public partial class Begin : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "request_keys",
                columns: table => new
                {
                    scope = table.Column<string>(type: "text", nullable: false),
                    key = table.Column<string>(type: "text", nullable: false),
                    fingerprint = table.Column<string>(type: "text", nullable: false),
                    at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    workshop = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: true),
                    suppose = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_request_keys", x => new { x.scope, x.key });
                });

            migrationBuilder.CreateTable(
                name: "workshops",
                columns: table => new
                {
                    id = table.Column<string>(type: "text", nullable: false),
                    owner = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    planned_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    created_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    changed_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    deleted_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_workshops", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "changes",
                columns: table => new
                {
                    workshop = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: false),
                    at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    who = table.Column<string>(type: "text", nullable: false),
                    act = table.Column<string>(type: "text", nullable: false),
                    of = table.Column<long>(type: "bigint", nullable: true),
                    says = table.Column<string>(type: "text", nullable: false),
                    after = table.Column<string>(type: "jsonb", nullable: false),
                    before = table.Column<string>(type: "jsonb", nullable: false),
                    undone_by = table.Column<long>(type: "bigint", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_changes", x => new { x.workshop, x.version });
                    table.ForeignKey(
                        name: "FK_changes_workshops_workshop",
                        column: x => x.workshop,
                        principalTable: "workshops",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "log",
                columns: table => new
                {
                    workshop = table.Column<string>(type: "text", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    at_nanoseconds = table.Column<int>(type: "integer", nullable: false),
                    task = table.Column<string>(type: "text", nullable: true),
                    stage = table.Column<string>(type: "text", nullable: true),
                    episode = table.Column<string>(type: "text", nullable: true),
                    part = table.Column<string>(type: "text", nullable: true),
                    minutes = table.Column<int>(type: "integer", nullable: false),
                    outcome = table.Column<string>(type: "text", nullable: false),
                    remaining_minutes = table.Column<int>(type: "integer", nullable: true),
                    station = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true),
                    owner = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: false),
                    deleted_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_log", x => new { x.workshop, x.id });
                    table.ForeignKey(
                        name: "FK_log_workshops_workshop",
                        column: x => x.workshop,
                        principalTable: "workshops",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "supposes",
                columns: table => new
                {
                    workshop = table.Column<string>(type: "text", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    @base = table.Column<long>(name: "base", type: "bigint", nullable: false),
                    changes = table.Column<string>(type: "jsonb", nullable: false),
                    who = table.Column<string>(type: "text", nullable: false),
                    at = table.Column<Instant>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_supposes", x => new { x.workshop, x.id });
                    table.ForeignKey(
                        name: "FK_supposes_workshops_workshop",
                        column: x => x.workshop,
                        principalTable: "workshops",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "things",
                columns: table => new
                {
                    workshop = table.Column<string>(type: "text", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    series = table.Column<string>(type: "text", nullable: true),
                    body = table.Column<string>(type: "jsonb", nullable: false),
                    owner = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: false),
                    deleted_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_things", x => new { x.workshop, x.kind, x.id });
                    table.ForeignKey(
                        name: "FK_things_workshops_workshop",
                        column: x => x.workshop,
                        principalTable: "workshops",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "told_dates",
                columns: table => new
                {
                    workshop = table.Column<string>(type: "text", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    episode = table.Column<string>(type: "text", nullable: false),
                    date = table.Column<LocalDate>(type: "date", nullable: false),
                    told_on = table.Column<LocalDate>(type: "date", nullable: false),
                    to = table.Column<string>(type: "text", nullable: false),
                    odds = table.Column<decimal>(type: "numeric", nullable: true),
                    owner = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: false),
                    deleted_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_told_dates", x => new { x.workshop, x.id });
                    table.ForeignKey(
                        name: "FK_told_dates_workshops_workshop",
                        column: x => x.workshop,
                        principalTable: "workshops",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "uploads",
                columns: table => new
                {
                    workshop = table.Column<string>(type: "text", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    series = table.Column<string>(type: "text", nullable: false),
                    date = table.Column<LocalDate>(type: "date", nullable: false),
                    name = table.Column<string>(type: "text", nullable: true),
                    episode = table.Column<string>(type: "text", nullable: true),
                    owner = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<long>(type: "bigint", nullable: false),
                    deleted_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_uploads", x => new { x.workshop, x.id });
                    table.ForeignKey(
                        name: "FK_uploads_workshops_workshop",
                        column: x => x.workshop,
                        principalTable: "workshops",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_log_deleted_at",
                table: "log",
                column: "deleted_at");

            migrationBuilder.CreateIndex(
                name: "IX_log_workshop_deleted_at",
                table: "log",
                columns: new[] { "workshop", "deleted_at" });

            migrationBuilder.CreateIndex(
                name: "IX_request_keys_at",
                table: "request_keys",
                column: "at");

            migrationBuilder.CreateIndex(
                name: "IX_things_deleted_at",
                table: "things",
                column: "deleted_at");

            migrationBuilder.CreateIndex(
                name: "IX_things_workshop_deleted_at",
                table: "things",
                columns: new[] { "workshop", "deleted_at" });

            migrationBuilder.CreateIndex(
                name: "IX_told_dates_deleted_at",
                table: "told_dates",
                column: "deleted_at");

            migrationBuilder.CreateIndex(
                name: "IX_told_dates_workshop_deleted_at",
                table: "told_dates",
                columns: new[] { "workshop", "deleted_at" });

            migrationBuilder.CreateIndex(
                name: "IX_uploads_deleted_at",
                table: "uploads",
                column: "deleted_at");

            migrationBuilder.CreateIndex(
                name: "IX_uploads_workshop_deleted_at",
                table: "uploads",
                columns: new[] { "workshop", "deleted_at" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "changes");

            migrationBuilder.DropTable(
                name: "log");

            migrationBuilder.DropTable(
                name: "request_keys");

            migrationBuilder.DropTable(
                name: "supposes");

            migrationBuilder.DropTable(
                name: "things");

            migrationBuilder.DropTable(
                name: "told_dates");

            migrationBuilder.DropTable(
                name: "uploads");

            migrationBuilder.DropTable(
                name: "workshops");
        }
    }
}
